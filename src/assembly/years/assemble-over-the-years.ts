import type { CalibrationRecord } from "../../record/record-schema.ts";
import { unsealedSummary } from "../../record/record-summary.ts";
import { overTheYears } from "./over-the-years.ts";

/**
 * The loop over its filed records, up to what was found and left now.
 *
 * @param record with its history, where a folder of filed records was given
 * @returns the part; nothing where no folder was given, or no record of the loop has a day
 * Source: `overTheYears`.
 * @example assembleOverTheYears({ ...record, history: undefined }) // {}
 */
export function assembleOverTheYears(record: CalibrationRecord): Pick<CalibrationRecord, "overTheYears"> {
  const { history, instrument } = record;
  if (history === undefined) return {};
  const { intervalMonths } = instrument;
  const found = overTheYears([...history, unsealedSummary(record)], { intervalMonths, instrument });
  return found === undefined ? {} : { overTheYears: found };
}
