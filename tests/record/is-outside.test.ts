import { expect, test } from "vitest";
import { isOutside } from "../../src/record/is-outside.ts";
import { simpleAcceptance } from "../../src/verdict/decision/simple-acceptance.ts";

const limits = { toleranceLow: -5, toleranceHigh: 5 };
const range = { rangeLower: 0, rangeUpper: 1000 };

test("5.1 lies outside ±5", () => {
  expect(isOutside(5.1, limits, range)).toBe(true);
});

test("far from zero the rounding is that of the distance, not of the span", () => {
  const far = { rangeLower: -6000, rangeUpper: -5999 };
  const narrow = { toleranceLow: -0.005, toleranceHigh: 0.005 };
  // A reference of 5999.5 is stored to 9e-13; 5e-10 more is beyond every rounding of it but not of 6e-9.
  expect(isOutside(0.005 + 5e-10, narrow, far)).toBe(false);
  expect(isOutside(0.005 + 7e-9, narrow, far)).toBe(true);
});

test("an error lies outside where simple acceptance says fail, on the limit and a rounding beyond it too", () => {
  for (const error of [-5.1, -5 - 1e-11, -5, 0, 4.999, 5, 5 + 9e-10, 5 + 2e-9, 7]) {
    expect(isOutside(error, limits, range)).toBe(simpleAcceptance(error, { low: -5, high: 5 }, 1000) === "fail");
  }
});
