import { renderToString } from "preact-render-to-string";
import type { Drawing } from "../charts/drawing/draw.ts";
import { signingState } from "../proof/signing-state.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { embeddedRecord, styleString } from "./escape.ts";
import { htmlDocument } from "./html-document.ts";
import { AmendmentPart } from "./parts/amendment.tsx";
import { Answer } from "./parts/answer.tsx";
import { Basis } from "./parts/basis.tsx";
import { Causes } from "./parts/causes.tsx";
import { FiguresTable } from "./parts/figures-table.tsx";
import { Heading } from "./parts/heading.tsx";
import { History, type HistoryDrawings } from "./parts/history.tsx";
import { Impact } from "./parts/impact.tsx";
import { LoopChecks } from "./parts/loop-checks.tsx";
import { OtherPictures, Picture } from "./parts/pictures.tsx";
import { Recommendation } from "./parts/recommendation.tsx";
import { ReplacementFit } from "./parts/replacement-fit.tsx";
import { Reteach } from "./parts/reteach.tsx";
import { SafetyNotes } from "./parts/safety-notes.tsx";
import { SetPointTable } from "./parts/set-point-table.tsx";
import { SignOff } from "./parts/sign-off.tsx";
import { Sound } from "./parts/sound.tsx";
import { Switching } from "./parts/switching.tsx";
import { Uncertainty } from "./parts/uncertainty.tsx";
import { WorkingSheets } from "./parts/working-sheet.tsx";
import { numberStyleOf } from "./style/number-style.ts";
import { pageStyle } from "./style/page-style.ts";
import { revisionWords } from "./texts/revision-words.ts";
import { printedStateWords } from "./texts/signing-texts.ts";

/** The drawings of a page: the error picture in two widths, the others, and why one of them is missing. */
export type PageDrawings = {
  errorWide: Drawing | undefined;
  errorNarrow: Drawing | undefined;
  /** Sensor against controller, where controller values were read. */
  stages: readonly Drawing[];
  /** Before and after the best two constants; with and without the error of the air. */
  reteach?: Drawing | undefined;
  sound?: Drawing | undefined;
  /** Over the filed records, where there are any. */
  history?: HistoryDrawings | undefined;
  others: readonly Drawing[];
  absent: readonly string[];
};

const contentSecurityPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

/** One calibration as one self-contained page: no script, no network, the record's JSON inside. */
export function renderPage(record: SealedRecord, drawings: PageDrawings): string {
  const { instrument, calibration } = record;
  const title = `${instrument.tag} · calibration record ${calibration.calibration}${revisionWords(record)}`;
  return htmlDocument({
    title: title,
    contentSecurityPolicy,
    style: `${pageStyle}${printedMargins(record)}`,
    body: renderToString(<Page record={record} drawings={drawings} />),
    scripts: `<script type="application/json" id="record">${embeddedRecord(record)}</script>`,
  });
}

function Page({ record, drawings }: { record: SealedRecord; drawings: PageDrawings }) {
  const style = numberStyleOf(record);
  return (
    <main>
      <Heading record={record} />
      <Answer record={record} style={style} />
      <AmendmentPart record={record} />
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
      <History record={record} drawings={drawings.history} />
      <Switching record={record} />
      <LoopChecks record={record} />
      <Recommendation record={record} />
      <Causes record={record} />
      <Reteach record={record} style={style} drawing={drawings.reteach} />
      <ReplacementFit record={record} />
      <Impact record={record} style={style} />
      <Sound record={record} style={style} drawing={drawings.sound} />
      <Uncertainty record={record} style={style} />
      <SetPointTable record={record} />
      <Basis record={record} />
      <SafetyNotes record={record} />
      <SignOff record={record} />
    </main>
  );
}

const caution = "Safety: site lockout procedure and local codes come first";

/** Tag, record number and state at the head of every printed page, the fingerprint at its foot. */
function printedMargins(record: SealedRecord): string {
  const { instrument, calibration, seal } = record;
  const state = printedStateWords(signingState(record));
  const name = `${calibration.calibration}${revisionWords(record)}`;
  const head = `${styleString(`${instrument.tag} · record ${name}`)} ${styleString(` · ${state}`)}`;
  const foot = `${styleString(caution)} "\\a " ${styleString(`Fingerprint: ${seal.fingerprint}`)}`;
  return `@page{@top-left{content:${head}}@bottom-left{content:${foot}}}`;
}
