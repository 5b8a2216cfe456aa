import { expect, test } from "vitest";
import { roundingOf, valueGrid } from "../../../src/verdict/causes/value-grid.ts";

test("2, 6 and 12 lie on a grid of 2, decimals on one of a tenth, and two values on none", () => {
  expect(valueGrid([2, 6, 6, 12, 2.0], 1)).toEqual({ step: 2, distinct: 3 });
  expect(valueGrid([0.5, 0.8, 1.2], 1)).toEqual({ step: 0.1, distinct: 3 });
  expect(valueGrid([-4, 0, 6], 0)).toEqual({ step: 2, distinct: 3 });
  expect(valueGrid([1, 2, 1], 0)).toBeUndefined();
  expect(valueGrid([], 0)).toBeUndefined();
});

test("fractions that are cut off leave a mean error of about half a step; round truths are no rounding", () => {
  const cut = roundingOf([1, 2, 3, 5, 8], [1.2, 2.9, 3.5, 5.6, 8.1], 0);
  expect(cut?.step).toBe(1);
  expect(Math.abs((cut?.meanInSteps ?? 0) + 0.46)).toBeLessThan(1e-12);
  expect(roundingOf([0, 10, 20, 30, 40], [0.01, 10.02, 19.99, 30, 40.01], 0)).toBeUndefined();
  expect(roundingOf([1, 2, 3, 5], [1.2, 2.9, 3.5, 5.6], 0)).toBeUndefined();
});
