import type { ComponentChild } from "preact";
import { renderToString } from "preact-render-to-string";
import { digestOf } from "../record/file-digest.ts";
import { packed, sha256 } from "./main.browser.tsx?packed";
import { PaperForm } from "./paper-form.tsx";
import { paperFormStyle } from "./paper-form-style.ts";
import type { SheetData } from "./sheet-data.ts";
import { loopOfSheet } from "./sheet-loop.ts";
import { sheetStyle } from "./sheet-style.ts";
import unpack from "./unpack.client.js";

/** The entry sheet of one calibration: one file, no network, no program but the two that its policy names. */
export function sheetPage(data: SheetData): string {
  const loop = loopOfSheet(data);
  const body = renderToString(
    <main>
      <header>
        <p class="kind">Entry sheet {data.sheet}</p>
        <h1>{data.tag}</h1>
        <p class="subject">
          calibration {data.calibration}
          {loop.instrument.description === undefined ? "" : `, ${loop.instrument.description}`}
        </p>
      </header>
      <div id="sheet">Opening the sheet … Without scripts it can be printed and filled in by hand.</div>
      <div class="form-on-paper">
        <PaperForm data={data} loop={loop} />
      </div>
    </main>,
  );
  const scripts = [
    `<script type="application/json" id="sheet-data">${JSON.stringify(data).replaceAll("<", "\\u003c")}</script>`,
    `<script type="application/octet-stream" id="program">${packed}</script>`,
    `<script>${unpack}</script>`,
  ];
  return htmlPage({
    title: `${data.tag}, calibration ${data.calibration}: entry sheet`,
    policy: `default-src 'none'; script-src 'sha256-${hashOf(unpack)}' 'sha256-${sha256}'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'`,
    style: sheetStyle + paperFormStyle,
    body: [body, ...scripts].join("\n"),
  });
}

/** The same calibration as a form for the pen, without any script. */
export function paperPage(data: SheetData): string {
  return htmlPage({
    title: `${data.tag}, calibration ${data.calibration}: form`,
    policy: "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'",
    style: `${paperFormStyle}body{margin:0}main{max-width:190mm;margin:8mm auto}@media print{main{max-width:none;margin:0}}`,
    body: renderToString(
      <main>
        <PaperForm data={data} loop={loopOfSheet(data)} />
      </main>,
    ),
  });
}

type PageParts = { title: string; policy: string; style: string; body: string };

function htmlPage({ title, policy, style, body }: PageParts): string {
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    renderToString(<title>{title as ComponentChild}</title>),
    `<style>${style}</style>`,
    "</head><body>",
    body,
    "</body></html>\n",
  ].join("\n");
}

function hashOf(script: string): string {
  return btoa(String.fromCharCode(...digestOf(new TextEncoder().encode(script))));
}
