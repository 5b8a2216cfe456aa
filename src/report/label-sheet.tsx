import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { signingState } from "../proof/signing-state.ts";
import { overallOf } from "../record/overall-of.ts";
import { phaseTitles } from "../record/phase-name.ts";
import { isInTolerance } from "../record/phase-statement.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { htmlDocument } from "./html-document.ts";
import { isolatedTexts } from "./isolated-texts.ts";
import { QrCode } from "./qr-code.tsx";
import { failedOutputs } from "./texts/switching-texts.ts";

/** An A4 sheet in three columns of eight, or one label a page for a printer that takes a roll. */
export type LabelForm = { isSheet: boolean /** Places of the first sheet that are used up. */; skipped: number };

const placesOfSheet = 24;
const contentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:";

/** Labels for the loops of some records, 70 × 37 mm each, as one page to print. */
export function renderLabels(records: readonly SealedRecord[], { isSheet, skipped }: LabelForm): string {
  const empty = Array.from({ length: isSheet ? skipped : 0 }, () => undefined);
  const sheets = chunks([...empty, ...records], isSheet ? placesOfSheet : 1);
  return htmlDocument({
    title: "Calibration labels",
    contentSecurityPolicy,
    style: `${labelStyle}@page{size:${isSheet ? "A4" : "70mm 37mm"};margin:0}`,
    body: isolatedTexts(
      renderToString(
        <main>
          {sheets.map((places, index) => (
            <section
              key={String(index)}
              class={isSheet ? "sheet" : "single"}
              aria-label={isSheet ? `Sheet ${index + 1}` : `Label ${index + 1}`}
            >
              {places.map((record, place) => (
                <Place key={record?.seal.sha256 ?? `empty ${place}`} record={record} />
              ))}
            </section>
          ))}
        </main>,
      ),
      records,
    ),
  });
}

/** What a label says: which loop, when, by whom, how it was left, when next if that was agreed, and the record. */
function Place({ record }: { record: SealedRecord | undefined }) {
  if (record === undefined) return <div class="place" />;
  const { instrument, calibration, nextDue, seal, revision } = record;
  return (
    <article class="place">
      <header>
        <h2>
          <bdi>{instrument.tag}</bdi>
        </h2>
        {!signingState(record).isIssued && <strong class="draft">DRAFT</strong>}
      </header>
      <State record={record} />
      <div class="told">
        <dl>
          <Line name="Calibrated">
            <strong>{calibration.performedOn ?? "not stated"}</strong> by {calibration.performedBy ?? "not stated"}
          </Line>
          {nextDue !== undefined && (
            <Line name="Next due">
              <strong>{nextDue}</strong>
            </Line>
          )}
          <Line name="Record">
            {calibration.calibration}, revision {revision}
          </Line>
        </dl>
        <QrCode
          text={`${calibration.calibration}, revision ${revision}, ${seal.fingerprint}`}
          label="Record, revision and fingerprint as a QR code"
        />
      </div>
      <p class="fingerprint">{seal.fingerprint}</p>
    </article>
  );
}

function Line({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** The word of the record, in capitals on a dark ground where it is no pass; then what it rests on. */
function State({ record }: { record: SealedRecord }) {
  const { word, of } = overallOf(record);
  const title = of === null ? "Not read" : phaseTitles[of];
  if (word === "pass" || word === "conditional pass") return <p class="state">{`${title}: ${word}`}</p>;
  const parts = failedParts(record);
  return (
    <p class={parts === "" ? "state failed" : "state failed several"}>
      {`${title}: ${word.toUpperCase()}`}
      {parts !== "" && ` · ${parts}`}
    </p>
  );
}

/** What does not pass beside the readings, by name, and what is not complete; or that what was read is in tolerance. */
function failedParts(record: SealedRecord): string {
  const { word, of, loop, loopCheck, complete } = overallOf(record);
  if (word === "not complete") return isInTolerance(loop) ? "in tolerance where it was read" : "";
  const outputs = failedOutputs(record).filter(({ phase }) => phase === undefined || phase === of);
  return [
    ...outputs.map(({ output }) => output),
    ...(loopCheck === "fail" ? ["loop check"] : []),
    ...(complete ? [] : ["not complete"]),
  ].join(", ");
}

function chunks<Item>(items: readonly Item[], size: number): readonly (readonly Item[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}

const labelStyle = `
*{box-sizing:border-box}
html{background:#e9edf1;color-scheme:light}
body{margin:0;font:8.5pt/1.3 Inter,system-ui,sans-serif;color:#1b2430}
h2,p,dl,dd{margin:0}
strong,h2,.state{font-weight:600}
.sheet,.single{background:#fff;margin:12px auto}
.sheet+.sheet,.single+.single{break-before:page}
.sheet{display:grid;grid-template-columns:repeat(3,70mm);grid-auto-rows:37mm;width:210mm;height:296mm}
.single{width:70mm}
.place{width:70mm;height:37mm;padding:2.8mm 4.5mm 2.6mm;overflow:hidden;overflow-wrap:anywhere}
article.place{display:flex;flex-direction:column}
header{display:flex;align-items:center;gap:3mm;justify-content:space-between}
h2{font-size:17pt;line-height:1.15;min-width:0;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
.draft{flex:none;font-size:10pt;line-height:1;letter-spacing:.04em;padding:.8mm 1.6mm;border:.5mm solid currentColor}
.state{font-size:11pt;line-height:1.15;margin:.6mm 0}
.several{font-size:10pt}
.failed{background:#1b2430;color:#fff;padding:.5mm 1.6mm;print-color-adjust:exact;-webkit-print-color-adjust:exact}
.told{flex:1;min-height:0;display:flex;gap:1mm;align-items:flex-start}
.qr{flex:none;width:14.5mm;height:14.5mm;margin:-.6mm -2mm 0 0;background:#fff}
dl{flex:1;min-width:0;max-height:100%;overflow:hidden;font-size:7.8pt;line-height:1.2}
dl div{display:grid;grid-template-columns:14.5mm minmax(0,1fr)}
dt{color:#525d6a}
dd{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden}
.fingerprint{font-size:7pt;line-height:1.25;white-space:nowrap;letter-spacing:-.01em}
.sheet .place{outline:0.2mm dashed #c9d1d9}
.place .record{margin-top:1mm;font-size:7.5pt;line-height:1.25}
.place .record{-webkit-line-clamp:3}
@media print{html{background:#fff}.sheet,.single{margin:0}.sheet .place{outline:none}}
@media (max-width:800px){.sheet{display:block;width:auto;height:auto}.place{margin:0 auto}}
`;
