/** Date and time of day where the technician stands, to the millisecond, with the offset from UTC. */
export function localDateTime(now: Date): string {
  const offset = -now.getTimezoneOffset();
  const local = new Date(now.getTime() + offset * 60_000).toISOString().slice(0, -1);
  const [hours, minutes] = [Math.floor(Math.abs(offset) / 60), Math.abs(offset) % 60];
  const twoDigits = (value: number) => String(value).padStart(2, "0");
  return `${local}${offset < 0 ? "-" : "+"}${twoDigits(hours)}:${twoDigits(minutes)}`;
}

/** The calendar day there. */
export function localDate(now: Date): string {
  return localDateTime(now).slice(0, "2026-11-25".length);
}

/** Date and time of day there, to the second. */
export function localTime(now: Date): string {
  return localDateTime(now).replace(/\.\d+/u, "");
}
