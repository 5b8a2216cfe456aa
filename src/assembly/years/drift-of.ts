import type { CalibrationRecord } from "../../record/record-schema.ts";
import { unsealedSummary } from "../../record/record-summary.ts";
import type { RecordSummary } from "../../record/record-summary-schema.ts";
import { type DriftFindings, type DriftState, driftHistory } from "../../verdict/recommendation/drift-history.ts";
import { recordsOfOneLoop } from "./records-of-one-loop.ts";

/**
 * How the loop drifted from record to record, up to what was found now.
 *
 * The history begins where `recordsOfOneLoop` says that it is the history of this loop.
 *
 * @param record with its history, where a folder of filed records was given
 * @returns the drift of the last two intervals at most
 * Source: `driftHistory`.
 * @example driftOf({ ...record, history: undefined }).earlier // null
 */
export function driftOf(record: CalibrationRecord): DriftFindings {
  const { history, instrument } = record;
  const now = unsealedSummary(record);
  const kept = new Set(recordsOfOneLoop([...(history ?? []), now]).records.map(({ calibration }) => calibration));
  return driftHistory(
    history?.filter(({ calibration }) => kept.has(calibration)).map(datedPoints),
    datedPoints(now),
    instrument.rangeUpper - instrument.rangeLower,
    now.pointsOf === "controller",
  );
}

function datedPoints({
  calibration,
  performedOn,
  adjustment,
  asFound,
  asLeft,
}: Omit<RecordSummary, "sha256">): DriftState {
  return {
    calibration,
    performedOn,
    adjustment,
    asFound: asFound?.points ?? null,
    asLeft: asLeft?.points ?? null,
  };
}
