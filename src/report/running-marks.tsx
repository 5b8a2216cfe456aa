import { signingState } from "../proof/signing-state.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { printedStateWords } from "./texts/signing-texts.ts";

/**
 * Tag, record, revision, state and fingerprint, and which sheet this is: the head of a sheet, which paper repeats on each
 * of its sides. A screen does not show it, and a screen reader hears it elsewhere.
 */
export function RunningMarks({ record, sheet }: { record: SealedRecord; sheet: string }) {
  const { instrument, calibration, revision, seal } = record;
  return (
    <div class="running" aria-hidden="true">
      <p class="marks">
        <span>
          <strong>
            <bdi>{instrument.tag}</bdi>
          </strong>{" "}
          · record {calibration.calibration}, revision {revision} ·{" "}
          <strong>{printedStateWords(signingState(record))}</strong> · fingerprint {seal.fingerprint}
        </span>
        <span>{sheet}</span>
      </p>
    </div>
  );
}
