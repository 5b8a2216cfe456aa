/** What is said of a test point, a part of the loop, a phase: the four words of ILAC-G8:09/2019, 4.2.3, and one of our own. */
export const statements = ["pass", "conditional pass", "conditional fail", "fail", "cannot be decided"] as const;
export type Statement = (typeof statements)[number];

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
export function worstStatement<Said extends Statement>(statements: readonly Said[]): Said | undefined {
  return statements.reduce<Said | undefined>(
    (worst, statement) =>
      worst === undefined || statementSeverity[statement] > statementSeverity[worst] ? statement : worst,
    undefined,
  );
}

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
