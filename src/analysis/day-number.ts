const millisecondsPerDay = 86_400_000;

/** As the register and the recommendation count. */
export const daysPerYear = 365.25;

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
