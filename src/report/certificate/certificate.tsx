import { fingerprintOf } from "../../proof/fingerprint-words.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { PageDrawings } from "../page-drawings.ts";
import { Picture } from "../parts/pictures.tsx";
import { RunningMarks } from "../running-marks.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import { Answer } from "./answer.tsx";
import { KeyFigures, StandardsInShort } from "./key-figures.tsx";
import { LimitsOfRecord } from "./limits-of-record.tsx";
import { Masthead } from "./masthead.tsx";
import { NextStep } from "./next-step.tsx";
import { SignOff } from "./sign-off.tsx";
import { TestPointTable } from "./test-point-table.tsx";

type CertificateProps = { record: SealedRecord; style: NumberStyle; drawings: PageDrawings };

/** Sheet 1: what a technician signs. It stands alone when it is torn off. */
export function Certificate({ record, style, drawings }: CertificateProps) {
  return (
    <article class="leaf certificate" id="sheet-1" aria-label="Sheet 1, the certificate">
      <RunningMarks record={record} sheet="Sheet 1" />
      <div class="leaf-body">
        <Masthead record={record} />
        <Replaces record={record} />
        <Answer record={record} style={style} />
        <TestPointTable record={record} style={style} />
        <div class="picture-and-figures">
          <section class="error-picture" aria-labelledby="error-title">
            <h2 id="error-title">Error against reference distance</h2>
            {drawings.errorWide && <Picture drawing={drawings.errorWide} kind="wide-only" />}
            {drawings.errorNarrow && <Picture drawing={drawings.errorNarrow} kind="narrow-only" />}
          </section>
          <section class="in-short" aria-labelledby="in-short-title">
            <h2 id="in-short-title">Figures and standards</h2>
            <KeyFigures record={record} style={style} />
            <StandardsInShort record={record} />
          </section>
        </div>
        <NextStep record={record} />
        <LimitsOfRecord record={record} />
        <SignOff record={record} />
      </div>
    </article>
  );
}

/** A later revision says first what it replaces, and why. */
function Replaces({ record: { amendment, revision } }: { record: SealedRecord }) {
  if (amendment === undefined) return null;
  const { replaces, reason, by } = amendment;
  return (
    <p class="replaces">
      <strong>
        Revision {revision} replaces revision {replaces.revision}
      </strong>{" "}
      (fingerprint {fingerprintOf(replaces.sha256)}). Reason: <bdi>{reason}</bdi>; amended by <bdi>{by}</bdi>. What
      changed: annex I.
    </p>
  );
}
