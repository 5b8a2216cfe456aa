import { digestOf } from "../record/file-digest.ts";
import { htmlDocument } from "./html-document.ts";
import script from "./register.client.js";
import { pageStyle } from "./style/page-style.ts";

type Searched = {
  title: string;
  style: string;
  body: string;
  /** Rows as data, each part an element. */
  data?: string;
};

/** A page of many records, which reads without its script and is searched and sorted with it. */
export function searchedDocument({ title, style, body, data = "" }: Searched): string {
  return htmlDocument({
    title,
    contentSecurityPolicy: contentSecurityPolicy(),
    style: `${pageStyle}${registerStyle}${style}`,
    body,
    scripts: `${data}<script>${script}</script>`,
  });
}

/** A page of a part of them: to be read and printed, without any script. */
export function partDocument({ title, style, body }: Omit<Searched, "data">): string {
  const contentSecurityPolicy =
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";
  return htmlDocument({ title, contentSecurityPolicy, style: `${pageStyle}${registerStyle}${style}`, body });
}

/** The page's own script and no other. */
function contentSecurityPolicy(): string {
  const hash = Buffer.from(digestOf(new TextEncoder().encode(script))).toString("base64");
  return `default-src 'none'; script-src 'sha256-${hash}'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'`;
}

const registerStyle = `
.counts{list-style:none;padding:0;display:grid;grid-template-columns:repeat(auto-fit,minmax(150px,1fr));gap:12px}
.counts li{border:1px solid var(--rule);border-top:6px solid var(--rule);padding:10px 14px;font-size:14px;line-height:1.35}
.counts strong{display:block;font-size:28px;line-height:1.2}
.counts .is-fail{border-top-color:var(--fail);border-top-style:double;border-top-width:8px}
.counts .is-fail strong{color:var(--fail)}
.register .where{display:block;font-size:12.5px;color:var(--quiet)}
.register th[scope=row]{white-space:nowrap}
.register td.number{text-align:right}
.register th button{font:inherit;color:inherit;background:none;border:0;padding:0;cursor:pointer;text-align:left;text-decoration:underline dotted}
.register th[aria-sort=ascending] button::after{content:" ↑";content:" ↑" / ""}
.register th[aria-sort=descending] button::after{content:" ↓";content:" ↓" / ""}
.find{display:flex;flex-wrap:wrap;gap:8px 20px;align-items:baseline}
.find[hidden]{display:none}
.find input,.find select{font:inherit;margin-left:6px;padding:4px 8px;border:1px solid var(--quiet);border-radius:2px}
.find output{color:var(--quiet)}
.find button{font:inherit;padding:4px 12px;border:1px solid var(--quiet);border-radius:2px;background:none;color:inherit;cursor:pointer}
.find button:disabled{color:var(--quiet);cursor:default}
.in-parts{margin-top:16px}
.in-parts summary{cursor:pointer;color:var(--quiet)}
.in-parts ol{columns:240px}
.rates .picture{max-width:640px}
a{color:inherit}
@media (max-width:700px){
 .register{min-width:900px}
 .register td:nth-child(2){min-width:190px}
 .register tbody th,.register thead th:first-child{position:sticky;left:0;background:var(--faint)}
}
@media print{
 .find label,.find button{display:none}
 .find output:not([data-sought=""])::after{content:": " attr(data-sought)}
 .in-parts ol{display:none}
 .register{font-size:8pt;min-width:0}
 .register .where{font-size:7.5pt}
 .register th,.register td{padding:3pt 5pt}
 .register th button{text-decoration:none}
 .counts{grid-template-columns:repeat(3,1fr);gap:8pt}
 .counts li{padding:5pt 9pt;font-size:9pt;break-inside:avoid}
 .counts strong{font-size:17pt}
 .rates .picture{max-width:330pt}
}
`;
