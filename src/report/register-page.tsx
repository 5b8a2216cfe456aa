import { renderToString } from "preact-render-to-string";
import type { Drawing } from "../charts/drawing/draw.ts";
import { digestOf } from "../record/file-digest.ts";
import type { Register } from "../record/register-form.ts";
import { htmlDocument } from "./html-document.ts";
import { Picture } from "./parts/pictures.tsx";
import { OpenFindings, RegisterAnswer, RegisterStandards } from "./parts/register-lists.tsx";
import { RegisterTable } from "./parts/register-table.tsx";
import script from "./register.client.js";
import { pageStyle } from "./style/page-style.ts";

/** What a folder of records says, as one page that reads without its script and is searched and sorted with it. */
export function renderRegister(register: Register, rates: Drawing | undefined): string {
  return htmlDocument({
    title: `Register of calibrations, ${register.on}`,
    contentSecurityPolicy: contentSecurityPolicy(),
    style: `${pageStyle}${registerStyle}${footOf(register.on)}`,
    body: renderToString(<RegisterPage register={register} rates={rates} />),
    scripts: `<script>${script}</script>`,
  });
}

/** The foot of every printed page; a day has no sign that style would read. */
function footOf(day: string): string {
  return `@page{@bottom-left{content:"Register of calibrations on ${day}"}}`;
}

/** The page's own script and no other. */
function contentSecurityPolicy(): string {
  const hash = Buffer.from(digestOf(new TextEncoder().encode(script))).toString("base64");
  return `default-src 'none'; script-src 'sha256-${hash}'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'`;
}

function RegisterPage({ register, rates }: { register: Register; rates: Drawing | undefined }) {
  return (
    <main>
      <header class="heading">
        <div>
          <p class="kind">Register of calibrations</p>
          <h1>On {register.on}</h1>
          <p class="subject">every loop by its last filed record</p>
        </div>
      </header>
      <RegisterAnswer register={register} />
      <OpenFindings openFindings={register.openFindings} />
      <RegisterTable rows={register.rows} />
      <RegisterStandards standards={register.standards} />
      {rates && (
        <section class="rates" aria-labelledby="rates-title">
          <h2 id="rates-title">Found in tolerance, year by year</h2>
          <Picture drawing={rates} kind="half" />
        </section>
      )}
      <section aria-labelledby="reading-title">
        <h2 id="reading-title">How to read it</h2>
        <p class="small">
          As found and as left: the statement, and the worst reading in percent of span; where nothing was adjusted, a
          loop was left as it was found. Drift: how far the fitted line of the error moved since the record before, at
          the end of the range that moved more, a year. A date is given only where a record left the loop in tolerance
          and somebody agreed to its interval. The page is made from the folder's index; whether the records may be
          believed is checked by spanwright verify.
        </p>
      </section>
    </main>
  );
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
.rates .picture{max-width:640px}
a{color:inherit}
@media (max-width:700px){
 .register{min-width:900px}
 .register td:nth-child(2){min-width:190px}
 .register tbody th,.register thead th:first-child{position:sticky;left:0;background:var(--faint)}
}
@media print{
 .find,.find[hidden]{display:none}
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
