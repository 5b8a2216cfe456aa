import { signingState } from "../../proof/signing-state.ts";
import type { CalibrationRecord, SealedRecord } from "../../record/record-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { Fact } from "../parts/fact.tsx";
import { conditionFacts } from "../parts/stated-facts.ts";
import { ruleInShort } from "../texts/decision-texts.ts";
import { dueNote } from "../texts/due-texts.ts";
import { toleranceFact } from "../texts/page-texts.ts";
import { amendmentWords, revisionWords } from "../texts/revision-words.ts";
import { stateWords } from "../texts/signing-texts.ts";

/** What it is, of what, by whom and when, and that it is a draft until everybody needed has signed. */
export function Masthead({ record }: { record: SealedRecord }) {
  const { calibration, instrument } = record;
  return (
    <header class="masthead">
      <div class="heading">
        <div>
          <p class="kind">
            Calibration record{amendmentWords(record)} <strong class="draft">{stateWords(signingState(record))}</strong>
          </p>
          <h1>
            <bdi>{instrument.tag}</bdi>
          </h1>
          <p class="subject">
            <bdi>{instrument.description ?? "description not stated"}</bdi>
          </p>
          <p class="laboratory">
            <bdi>{calibration.laboratory ?? "laboratory not stated"}</bdi>
          </p>
        </div>
        <dl class="facts">
          <Fact name="Record" value={`${calibration.calibration}${revisionWords(record)}`} />
          <Fact name="Performed on" value={calibration.performedOn} />
          <Fact name="Performed by" value={calibration.performedBy} />
          <div class="fact across">
            <dt>Fingerprint</dt>
            <dd>{record.seal.fingerprint}</dd>
          </div>
        </dl>
      </div>
      <dl class="facts loop-facts">
        <Fact name="Location" value={instrument.location} />
        <Fact name="Serial number" value={instrument.serial} />
        <Fact name="Range → signal" value={rangeWords(record)} />
        <Fact name="Conditions and target" value={conditionWords(record)} />
        <Fact name="Tolerance" value={toleranceFact(record)} />
        <Fact name="Decision rule" value={ruleInShort(record)} />
        <WorkDone record={record} />
        <NextDue record={record} />
      </dl>
    </header>
  );
}

function rangeWords({ instrument }: CalibrationRecord): string {
  const { rangeLower, rangeUpper, distanceUnit, signalLower, signalUpper, signalUnit } = instrument;
  const range = `${writePlain(rangeLower)} to ${writePlain(rangeUpper)} ${distanceUnit}`;
  return `${range} → ${writePlain(signalLower)} to ${writePlain(signalUpper)} ${signalUnit}`;
}

/** What was stated of air and target in one line; nothing where nothing was. */
function conditionWords(record: CalibrationRecord): string | undefined {
  const stated = new Map(conditionFacts(record));
  const words = ["Air temperature", "Relative humidity", "Air pressure", "Target"].flatMap((name) => {
    const value = stated.get(name);
    return value === undefined ? [] : [name === "Relative humidity" ? `${value} r.h.` : value];
  });
  return words.length === 0 ? undefined : words.join(", ");
}

function WorkDone({ record: { calibration } }: { record: CalibrationRecord }) {
  const { adjustment, alsoAdjusted = [], adjustmentNote } = calibration;
  return (
    <div class="fact">
      <dt>Adjustment</dt>
      <dd>
        <strong>{[adjustment ?? "not stated", ...alsoAdjusted].join(", ")}</strong>
        {adjustmentNote && `: ${adjustmentNote}`}
      </dd>
    </div>
  );
}

function NextDue({ record }: { record: CalibrationRecord }) {
  return (
    <div class="fact">
      <dt>Next due</dt>
      <dd>
        <strong>{record.nextDue ?? "not stated"}</strong>
        {`: ${dueNote(record)}`}
      </dd>
    </div>
  );
}
