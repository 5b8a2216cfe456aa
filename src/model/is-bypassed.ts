import type { Calibration } from "./calibration.ts";

/** What people write where a number of a permit would stand, and there is none. */
const noPermit: ReadonlySet<string> = new Set([
  "none",
  "no",
  "nil",
  "not needed",
  "not required",
  "not necessary",
  "not applicable",
  "not bypassed",
  "no bypass",
  "n/a",
  "na",
  "-",
  "–",
  "—",
]);

/**
 * Whether the loop was bypassed for the work: a permit for it is named.
 *
 * @param calibration with the cell `bypass_permit` as it was typed
 * @returns false where it is empty, or its words say that there is no permit
 * Source: own choice of words; every other text is the number of a permit.
 * @example isBypassed({ bypassPermit: "none" }) // false
 */
export function isBypassed({ bypassPermit }: Pick<Calibration, "bypassPermit">): boolean {
  if (bypassPermit === undefined) return false;
  return !noPermit.has(bypassPermit.trim().toLowerCase().replace(/\.$/u, ""));
}
