const datePattern = /^(\d{4})-(\d{2})-(\d{2})$/u;
const clockPattern = /^([01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:[.,]\d+)?)?(?:Z|[+-](?:[01]\d|2[0-3]):?[0-5]\d)?$/u;

/** Whether a text is a day of the calendar as ISO 8601 writes it; 2026-02-30 is none. */
export function isDate(text: string): boolean {
  const match = datePattern.exec(text);
  if (match === null) return false;
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number);
  const date = new Date(Date.UTC(year, month - 1, day));
  return year >= 100 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

/** Whether a text is a time of day as ISO 8601 writes it, with or without the date before it. */
export function isTime(text: string): boolean {
  const [date = "", clock] = text.split(/[T ]/u, 2);
  return clock === undefined ? clockPattern.test(date) : isDate(date) && clockPattern.test(clock);
}
