import { nextDueDate } from "../../analysis/years/next-due.ts";
import { overallOf } from "../../record/overall-of.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";

/**
 * The day by which a loop is to be calibrated again: only where the record proves that it was left in tolerance, and
 * somebody agreed to the interval.
 *
 * @param record with its phases and switched outputs
 * @returns the part, where there is such a day
 * Source: ISO/IEC 17025:2017, 7.8.4.3 (no interval unless it was agreed); own choice of what counts as in tolerance.
 * @example assembleNextDue({ instrument: {}, calibration: {}, phases: {} }) // {}
 */
export function assembleNextDue(record: CalibrationRecord): Pick<CalibrationRecord, "nextDue"> {
  const { intervalMonths, intervalAgreedBy, dueRule = "day" } = record.instrument;
  const { performedOn } = record.calibration;
  if (!isProved(record) || performedOn === undefined) return {};
  if (intervalMonths === undefined || intervalAgreedBy === undefined) return {};
  return { nextDue: nextDueDate(performedOn, intervalMonths, dueRule) };
}

/** In tolerance, switched outputs and loop check too, and complete: what was not proved stays open. */
function isProved(record: CalibrationRecord): boolean {
  const { word } = overallOf(record);
  return word === "pass" || word === "conditional pass";
}
