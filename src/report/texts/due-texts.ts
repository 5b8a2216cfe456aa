import type { CalibrationRecord } from "../../record/record-schema.ts";
import { monthsWords } from "./history-texts.ts";

/** What the next due date rests on, or why there is none; the interval and who agreed to it in either case. */
export function dueNote({ nextDue, instrument }: CalibrationRecord): string {
  if (nextDue !== undefined) {
    const counts = instrument.dueRule === "month end" ? "it runs to the end of that month" : "the day itself counts";
    return `interval of ${monthsWords(instrument.intervalMonths ?? 0)}, agreed by ${instrument.intervalAgreedBy}; ${counts}`;
  }
  if (instrument.intervalMonths === undefined) return "no interval is stated";
  if (instrument.intervalAgreedBy === undefined) return "nobody is named who agreed to the interval";
  const interval = `${monthsWords(instrument.intervalMonths)}, agreed by ${instrument.intervalAgreedBy}`;
  return `a due date is given only where the loop is left in tolerance and the record is complete; the interval is ${interval}`;
}
