import { renderToString } from "preact-render-to-string";
import type { Drawing } from "../charts/draw.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import { embeddedRecord, escapedText, styleString } from "./escape.ts";
import { fontFaces } from "./font-faces.ts";
import { numberStyleOf } from "./number-style.ts";
import { pageStyle } from "./page-style.ts";
import { Answer } from "./parts/answer.tsx";
import { Basis } from "./parts/basis.tsx";
import { FiguresTable } from "./parts/figures-table.tsx";
import { Heading } from "./parts/heading.tsx";
import { OtherPictures, Picture } from "./parts/pictures.tsx";
import { SafetyNotes } from "./parts/safety-notes.tsx";
import { SignOff } from "./parts/sign-off.tsx";
import { Uncertainty } from "./parts/uncertainty.tsx";
import { WorkingSheets } from "./parts/working-sheet.tsx";

/** The drawings of a page: the error picture in two widths, the others, and why one of them is missing. */
export type PageDrawings = {
  errorWide: Drawing | undefined;
  errorNarrow: Drawing | undefined;
  /** Sensor against controller, where controller values were read. */
  stages: readonly Drawing[];
  others: readonly Drawing[];
  absent: readonly string[];
};

const contentSecurityPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/** One calibration as one self-contained page: no script, no network, the record's JSON inside. */
export function renderPage(record: CalibrationRecord, drawings: PageDrawings): string {
  const { instrument, calibration } = record;
  const title = `${instrument.tag} · calibration record ${calibration.calibration}`;
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapedText(title)}</title>`,
    `<style>${fontFaces()}${pageStyle}${printedHeader(record)}</style>`,
    "</head><body>",
    renderToString(<Page record={record} drawings={drawings} />),
    `<script type="application/json" id="record">${embeddedRecord(record)}</script>`,
    "</body></html>\n",
  ].join("\n");
}

function Page({ record, drawings }: { record: CalibrationRecord; drawings: PageDrawings }) {
  const style = numberStyleOf(record);
  return (
    <main>
      <Heading record={record} />
      <Answer record={record} style={style} />
      <section class="error-picture" aria-labelledby="error-title">
        <h2 id="error-title">Error against reference distance</h2>
        {drawings.errorWide && <Picture drawing={drawings.errorWide} kind="wide-only" />}
        {drawings.errorNarrow && <Picture drawing={drawings.errorNarrow} kind="narrow-only" />}
        <div class="pictures">
          {drawings.stages.map((drawing) => (
            <Picture key={drawing.title} drawing={drawing} kind="half" />
          ))}
        </div>
      </section>
      <FiguresTable record={record} style={style} />
      <WorkingSheets record={record} style={style} />
      <OtherPictures drawings={drawings.others} absent={drawings.absent} />
      <Uncertainty record={record} style={style} />
      <Basis record={record} />
      <SafetyNotes record={record} />
      <SignOff record={record} />
    </main>
  );
}

/** Record number, tag and page of pages on every printed page. */
function printedHeader({ instrument, calibration }: CalibrationRecord): string {
  return `@page{@top-left{content:${styleString(`${instrument.tag} · record ${calibration.calibration} · DRAFT, not signed`)}}}`;
}
