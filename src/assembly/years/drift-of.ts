import { recordsOfOneLoop } from "../../analysis/years/records-of-one-loop.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { unsealedSummary } from "../../record/record-summary.ts";
import { type DriftFindings, driftHistory } from "../../verdict/recommendation/drift-history.ts";

/**
 * How the loop drifted from record to record, up to what was found now.
 *
 * The history begins where `recordsOfOneLoop` says that it is the history of this loop.
 *
 * @param record with its history, where a folder of filed records was given
 * @returns the drift, and the changes of the last two intervals at most
 * Source: `driftHistory`.
 * @example driftOf({ ...record, history: undefined }).earlier // null
 */
export function driftOf(record: CalibrationRecord): DriftFindings {
  const now = unsealedSummary(record);
  const records = record.history && recordsOfOneLoop([...record.history, now]).records;
  return driftHistory(records, record.instrument, now.pointsOf === "controller");
}
