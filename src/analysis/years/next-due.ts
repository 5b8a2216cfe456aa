import type { dueRules } from "../../model/instrument-words.ts";

/**
 * The last day on which a loop may be used before it is calibrated again.
 *
 * @param from ISO 8601 date of the calibration
 * @param months of the interval, whole
 * @param rule whether the day itself counts, or the end of the month that it lies in
 * @returns ISO 8601 date
 * Source: own choice; both meanings are common practice, and the record says which one holds.
 * @example nextDueDate("2026-03-17", 6, "month end") // "2026-09-30"
 */
export function nextDueDate(from: string, months: number, rule: (typeof dueRules)[number]): string {
  const day = monthsLater(from, months);
  return rule === "day" ? day : lastOfMonth(day);
}

/** The first of the next month, less a day. */
function lastOfMonth(day: string): string {
  const [year = 0, month = 1] = day.split("-").map(Number);
  return new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10);
}

/**
 * The day so many months later: the same day of the month, or the last of it where that month is shorter.
 *
 * @param from ISO 8601 date
 * @param months whole number of months; a fraction is cut off
 * @returns ISO 8601 date
 * Source: own choice, as calendars commonly count.
 * @example monthsLater("2026-08-31", 6) // "2027-02-28"
 */
export function monthsLater(from: string, months: number): string {
  const [year = 0, month = 1, day = 1] = from.split("-").map(Number);
  const first = new Date(Date.UTC(year, month - 1 + Math.trunc(months), 1));
  const lastDay = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate();
  first.setUTCDate(Math.min(day, lastDay));
  return first.toISOString().slice(0, 10);
}
