import { expect, test } from "vitest";
import { type StatedTolerance, toleranceWords } from "../../src/record/tolerance-words.ts";
import { sampleRecord } from "../charts/sample-record.ts";

test.each<[Partial<StatedTolerance>, string]>([
  [{ tolerance: 0.5 }, "±0.5 % of span"],
  [{ tolerance: 0.5, toleranceMinus: 0.5 }, "±0.5 % of span"],
  [{ tolerance: 0.5, toleranceMinus: 0.3 }, "−0.3 / +0.5 % of span"],
  [{ tolerance: 2, toleranceBasis: "distance" }, "±2 mm"],
  [{ tolerance: 0.05, toleranceBasis: "signal" }, "±0.05 mA"],
  [
    { tolerance: 0.1, secondTolerance: 0.2, secondToleranceBasis: "percent of reading" },
    "±0.1 % of span and ±0.2 % of reading, added",
  ],
  [
    { tolerance: 0.1, secondTolerance: 2, secondToleranceMinus: 1, secondToleranceBasis: "distance" },
    "±0.1 % of span and −1 / +2 mm, added",
  ],
  [
    {
      toleranceBasis: "percent of reading",
      secondTolerance: 5,
      secondToleranceBasis: "distance",
      toleranceCombined: "greater",
    },
    "±0.5 % of reading or ±5 mm, whichever is greater",
  ],
  [
    {
      tolerance: 3,
      toleranceMinus: 5,
      toleranceBasis: "distance",
      secondTolerance: 1,
      secondToleranceBasis: "percent of span",
      toleranceCombined: "less",
    },
    "−5 / +3 mm or ±1 % of span, whichever is less",
  ],
])("the tolerance of %j in words", (change, words) => {
  expect(toleranceWords({ ...sampleRecord().instrument, ...change })).toBe(words);
});
