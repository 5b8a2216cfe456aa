import { driftOverRecords } from "./drift-over-records.ts";
import type { CalibrationRecord } from "./record-schema.ts";
import { unsealedSummary } from "./record-summary.ts";

/**
 * How the loop drifted over its filed records, up to what was found and left now.
 *
 * @param record with its history, where a folder of filed records was given
 * @returns the part; nothing where no folder was given
 * Source: `driftOverRecords`.
 * @example assembleHistory({ ...record, history: undefined }) // {}
 */
export function assembleHistory(record: CalibrationRecord): Pick<CalibrationRecord, "drift"> {
  if (record.history === undefined) return {};
  return { drift: driftOverRecords([...record.history, unsealedSummary(record)]) };
}
