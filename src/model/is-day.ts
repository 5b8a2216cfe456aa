/** Whether a text is a day of the calendar, as 2026-11-25. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/u.test(text)) return false;
  const time = Date.parse(text);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
}
