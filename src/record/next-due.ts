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
