import { signingState } from "../../proof/signing-state.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { amendmentWords, revisionWords } from "../texts/revision-words.ts";
import { stateWords } from "../texts/signing-texts.ts";

/** What it is: record number, tag, place, date, fingerprint; and that it is a draft until everybody needed has signed. */
export function Heading({ record }: { record: SealedRecord }) {
  const { calibration, instrument } = record;
  return (
    <header class="heading">
      <div>
        <p class="kind">
          Calibration record{amendmentWords(record)} <strong class="draft">{stateWords(signingState(record))}</strong>
        </p>
        <h1>{instrument.tag}</h1>
        <p class="subject">{instrument.description ?? "description not stated"}</p>
      </div>
      <dl class="facts">
        <Fact name="Record" value={`${calibration.calibration}${revisionWords(record)}`} />
        <Fact name="Performed on" value={calibration.performedOn} />
        <Fact name="Performed by" value={calibration.performedBy} />
        <Fact name="Location" value={instrument.location} />
        <div class="fact across">
          <dt>Fingerprint</dt>
          <dd>{record.seal.fingerprint}</dd>
        </div>
      </dl>
    </header>
  );
}

/** A name and what was stated; what the workbook leaves empty says so. */
export function Fact({ name, value }: { name: string; value: string | undefined }) {
  return (
    <div class="fact">
      <dt>{name}</dt>
      <dd>{value === undefined ? <span class="not-stated">not stated</span> : value}</dd>
    </div>
  );
}
