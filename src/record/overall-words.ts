/** What may be said of a loop, from best to worst. */
export const overallWords = [
  "pass",
  "conditional pass",
  "not complete",
  "cannot be decided",
  "conditional fail",
  "fail",
] as const;

export type OverallWord = (typeof overallWords)[number];

/**
 * The word of a record, and beside a word that is worse that it is not complete: the same, in the same order, everywhere.
 *
 * @param word of the record
 * @param isComplete whether nothing is missing
 * @returns "fail, not complete"; the word alone where it says so itself, or nothing is missing
 * Source: own choice: what was proved stands first, and a fail is proved by what was read.
 * @example overallSays("fail", false) // "fail, not complete"
 */
export function overallSays(word: OverallWord, isComplete: boolean): string {
  return isComplete || word === "not complete" ? word : `${word}, not complete`;
}
