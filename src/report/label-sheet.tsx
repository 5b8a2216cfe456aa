import { renderToString } from "preact-render-to-string";
import type { SealedRecord } from "../record/record-schema.ts";
import { fontFaces } from "./font-faces.ts";
import { phasesOf } from "./page-texts.ts";

/** An A4 sheet in three columns of eight, or one label a page for a printer that takes a roll. */
export type LabelForm = { isSheet: boolean /** Places of the first sheet that are used up. */; skipped: number };

const placesOfSheet = 24;
const contentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:";

/** Labels for the loops of some records, 70 × 37 mm each, as one page to print. */
export function renderLabels(records: readonly SealedRecord[], { isSheet, skipped }: LabelForm): string {
  const empty = Array.from({ length: isSheet ? skipped : 0 }, () => undefined);
  const sheets = chunks([...empty, ...records], isSheet ? placesOfSheet : 1);
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    "<title>Calibration labels</title>",
    `<style>${fontFaces()}${labelStyle}@page{size:${isSheet ? "A4" : "70mm 37mm"};margin:0}</style>`,
    "</head><body>",
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
    "</body></html>\n",
  ].join("\n");
}

/** What a label says: which loop, when, by whom, how it was left, when next if that was agreed, and the record. */
function Place({ record }: { record: SealedRecord | undefined }) {
  if (record === undefined) return <div class="place" />;
  const { instrument, calibration, nextDue, seal, revision } = record;
  return (
    <article class="place">
      <h2>{instrument.tag}</h2>
      <p>
        Calibrated <strong>{calibration.performedOn ?? "on a day not stated"}</strong>
      </p>
      <p>by {calibration.performedBy ?? "not stated"}</p>
      <p>
        <strong>{stateWords(record)}</strong>
        {nextDue !== undefined && (
          <>
            {" "}
            · next due <strong>{nextDue}</strong>
          </>
        )}
      </p>
      <p class="record">
        Record {calibration.calibration}, revision {revision}
        <br />
        {seal.fingerprint}
      </p>
    </article>
  );
}

/** The state in which the loop was left, or as it was found where nothing was adjusted. */
function stateWords(record: SealedRecord): string {
  const last = phasesOf(record).at(-1);
  return `${last?.title ?? "Not read"}: ${last?.phase.verdict ?? "not determined"}`;
}

function chunks<Item>(items: readonly Item[], size: number): readonly (readonly Item[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}

const labelStyle = `
*{box-sizing:border-box}
html{background:#e9edf1;color-scheme:light}
body{margin:0;font:9.5pt/1.3 Inter,system-ui,sans-serif;color:#1b2430}
h2,p{margin:0}
h2{font-size:17pt;line-height:1.1;font-weight:600;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
strong{font-weight:600}
.sheet,.single{background:#fff;margin:12px auto}
.sheet+.sheet,.single+.single{break-before:page}
.sheet{display:grid;grid-template-columns:repeat(3,70mm);grid-auto-rows:37mm;width:210mm;height:296mm}
.single{width:70mm}
.place{width:70mm;height:37mm;padding:3.5mm 4.5mm;overflow:hidden;overflow-wrap:anywhere}
.place p{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden}
.sheet .place{outline:0.2mm dashed #c9d1d9}
.place .record{margin-top:1mm;font-size:7.5pt;line-height:1.25}
.place .record{-webkit-line-clamp:3}
@media print{html{background:#fff}.sheet,.single{margin:0}.sheet .place{outline:none}}
@media (max-width:800px){.sheet{display:block;width:auto;height:auto}.place{margin:0 auto}}
`;
