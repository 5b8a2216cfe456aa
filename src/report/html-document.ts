import { compactHtml } from "./compact-html.ts";
import { escapedText } from "./escape.ts";
import { fontFaces } from "./style/font-faces.ts";
import { usedRules } from "./style/used-rules.ts";

/** What differs from one kind of page to another; `body` and `scripts` are HTML, `style` is CSS, the title is text. */
export type DocumentParts = {
  title: string;
  contentSecurityPolicy: string;
  style: string;
  body: string;
  scripts?: string;
};

/** One self-contained page: no network, and no script but those that its policy names. */
export function htmlDocument({ title, contentSecurityPolicy, style, body, scripts }: DocumentParts): string {
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapedText(title)}</title>`,
    `<style>${fontFaces(body)}${usedRules(style, body)}</style>`,
    "</head><body>",
    compactHtml(body),
    ...(scripts === undefined ? [] : [scripts]),
    "</body></html>\n",
  ].join("\n");
}
