import type { FigureDefinition } from "./figure-definition.ts";

/** What one reading shows: distance, error, tolerance. */
export const errorFigures = Object.freeze([
  {
    key: "indicatedDistance",
    name: "Indicated distance",
    symbol: "d",
    unit: "distance",
    meaning: "The distance that an output stands for, by the range and the signal ends of the loop.",
    formula: "d(s) = L + (s − s0)/(s1 − s0) · (U − L), L to U the range, s0 to s1 the output meant at its ends",
    source: "IEC 60381-1 and -2 for the signals",
    fields: ["indicated"],
  },
  {
    key: "error",
    name: "Error",
    symbol: "e",
    unit: "distance, % of span",
    meaning: "Indicated minus reference, always with this sign.",
    formula: "e = d(s) − x, x the reference distance; in percent of span 100 · e/(U − L)",
    source: "JCGM 200:2012 (VIM), 2.16",
    fields: ["errorDistance", "errorSignal", "errorPercentSpan"],
  },
  {
    key: "tolerance",
    name: "Tolerance",
    symbol: "T",
    unit: "distance",
    meaning: "How far the error may be from zero, upwards and downwards, at one reference distance.",
    formula: "sum of its terms, each as distance: p % of span = p/100 · (U − L); p % of reading = p/100 · |x|",
    source: "common practice; the numbers are the owner's",
    fields: ["toleranceLow", "toleranceHigh"],
  },
  {
    key: "partOfTolerance",
    name: "Part of the tolerance",
    unit: "% of the tolerance",
    meaning: "How much of the tolerance on its side an error uses up; over 100 % it lies outside.",
    formula: "100 · e/T, T on the side of e",
    source: "common practice",
    fields: ["partOfTolerance"],
  },
] as const satisfies readonly FigureDefinition[]);
