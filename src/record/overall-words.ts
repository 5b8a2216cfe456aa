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
