import type { Statement } from "./decision-rule.ts";

/**
 * Whether a part of a loop, or a loop, counts as in tolerance: for what is done to it, its interval, its reliability and
 * what it may have touched.
 *
 * @param statement of a phase or a part of it; null where nothing was judged
 * @returns true for a pass and a conditional pass; a conditional fail, a fail and what cannot be decided are not
 * Source: own choice; the words are those of ILAC-G8:09/2019, 4.2.3.
 * @example isInTolerance("conditional fail") // false
 */
export function isInTolerance(statement: Statement | null): boolean {
  return statement === "pass" || statement === "conditional pass";
}
