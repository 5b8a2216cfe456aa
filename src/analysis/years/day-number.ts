const millisecondsPerDay = 86_400_000;

/** The Julian year, exact: with its leap days, but for those that centuries leave out. */
export const daysPerYear = 365.25;
export const daysPerMonth = daysPerYear / 12;

/**
 * A calendar day as a number that can be counted with.
 *
 * @param date ISO 8601 date
 * @returns whole days since 1970-01-01, below zero before
 * @throws RangeError where the text is no date
 * Source: ECMAScript `Date.parse`, which takes a date alone as UTC.
 * @example dayNumber("2024-03-01") // 19783
 */
export function dayNumber(date: string): number {
  const day = Date.parse(date) / millisecondsPerDay;
  if (!Number.isInteger(day)) throw new RangeError(`dayNumber: ${date} is no date`);
  return day;
}

/**
 * The calendar day of such a number.
 *
 * @param day whole days since 1970-01-01
 * @returns ISO 8601 date
 * Source: ECMAScript.
 * @example dateOf(19783) // "2024-03-01"
 */
export function dateOf(day: number): string {
  return new Date(day * millisecondsPerDay).toISOString().slice(0, 10);
}

/**
 * How many days lie between two calendar days.
 *
 * @param from ISO 8601 date
 * @param to ISO 8601 date
 * @returns whole days; below zero where the second comes first
 * @throws RangeError where a text is no date
 * Source: `dayNumber`.
 * @example daysBetween("2024-02-28", "2024-03-01") // 2
 */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/**
 * How many years lie between two calendar days.
 *
 * @param from ISO 8601 date
 * @param to ISO 8601 date
 * @returns years of 365.25 days; below zero where the second comes first
 * @throws RangeError where a text is no date
 * Source: `daysBetween`.
 * @example yearsBetween("2022-01-01", "2026-01-01") // 4
 */
export function yearsBetween(from: string, to: string): number {
  return daysBetween(from, to) / daysPerYear;
}
