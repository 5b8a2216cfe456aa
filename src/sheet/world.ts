import type { SheetStore } from "./kept-sheet.ts";

/** Everything that a sheet asks of the world around it; the page's entry gives the browser's, a test gives its own. */
export type World = {
  /** Local time with its distance from UTC: "2026-11-27T10:31:05+01:00". */
  now: () => string;
  /** Four digits of chance. */
  chance: () => string;
  openStore: () => Promise<SheetStore>;
  /** A note of what was not on the disk yet when a page was left: written in one go, taken once. */
  leaveNote: (name: string, text: string) => void;
  takeNote: (name: string) => string | undefined;
  /** Calls when the page is left; gives back what ends that. */
  onLeaving: (call: () => void) => () => void;
};

/**
 * A moment as it is written beside what was typed: local time, with its distance from UTC.
 *
 * @param date the moment
 * @param minutesBehind of local time against UTC, as `getTimezoneOffset` gives it
 * @returns to the second, as RFC 3339 has it
 * Source: RFC 3339, section 5.6.
 */
export function momentOf(date: Date, minutesBehind: number): string {
  const local = new Date(date.getTime() - minutesBehind * 60_000).toISOString().slice(0, 19);
  const ahead = -minutesBehind;
  const two = (number: number) => String(Math.floor(Math.abs(number))).padStart(2, "0");
  return `${local}${ahead < 0 ? "-" : "+"}${two(ahead / 60)}:${two(Math.abs(ahead) % 60)}`;
}
