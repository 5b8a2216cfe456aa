import { expect, test } from "vitest";
import { rankCorrelation } from "../../src/numeric/rank-correlation.ts";
import { readColumns } from "../published/read-data.ts";

test("whatever rises with the other is 1, whatever falls is −1, a constant is 0", () => {
  expect(rankCorrelation(Object.freeze([1, 2, 3, 4]), Object.freeze([1, 4, 9, 1000]))).toBe(1);
  expect(rankCorrelation([1, 2, 3], [5, 4, -7])).toBe(-1);
  expect(rankCorrelation([1, 2, 3], [5, 5, 5])).toBe(0);
});

test("ties share the mean of their ranks: 0.58215… and, on Norris, 0.99317… as in SciPy", () => {
  // scipy.stats.spearmanr, SciPy 1.17.1; relative tolerance 1e-14, a few roundings of sums of ranks.
  expect(Math.abs(rankCorrelation([1, 2, 2, 3, 5, 5], [2, 1, 4, 4, 9, 3]) / 0.5821543981758688 - 1)).toBeLessThan(
    1e-14,
  );
  const { x = [], y = [] } = readColumns("nist-norris");
  expect(Math.abs(rankCorrelation(x, y) / 0.9931758706783416 - 1)).toBeLessThan(1e-14);
});

test("lists of different length or a single pair are refused", () => {
  expect(() => rankCorrelation([1, 2], [1])).toThrow(RangeError);
  expect(() => rankCorrelation([1], [1])).toThrow(RangeError);
});
