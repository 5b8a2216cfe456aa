import type { Statement } from "./decision-rule.ts";

/**
 * How bad a statement is, to find the worst of several: the overall statement is the worst point's.
 * "Cannot be decided" stands between what passes and what fails: it is no proof of either.
 *
 * Source: own choice; ILAC-G8:09/2019 has the order of its four words.
 */
export const statementSeverity: Readonly<Record<Statement, number>> = Object.freeze({
  pass: 0,
  "conditional pass": 1,
  "cannot be decided": 2,
  "conditional fail": 3,
  fail: 4,
});

/**
 * The worst of several statements.
 *
 * @param statements any number
 * @returns the worst, or undefined where there is none
 * Source: own choice, as above.
 * @example worstStatement(["pass", "conditional pass"]) // "conditional pass"
 */
export function worstStatement(statements: readonly Statement[]): Statement | undefined {
  return statements.reduce<Statement | undefined>(
    (worst, statement) =>
      worst === undefined || statementSeverity[statement] > statementSeverity[worst] ? statement : worst,
    undefined,
  );
}
