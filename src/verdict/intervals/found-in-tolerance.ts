import type { Statement } from "../decision-rule.ts";

/**
 * Whether a loop that was found so counts as in tolerance, for its reliability and its interval.
 *
 * @param statement of a phase
 * @returns true for a pass and a conditional pass; a conditional fail, a fail and what cannot be decided are not
 * Source: own choice; the words are those of ILAC-G8:09/2019, 4.2.3.
 * @example isInTolerance("conditional fail") // false
 */
export function isInTolerance(statement: Statement | null): boolean {
  return statement === "pass" || statement === "conditional pass";
}
