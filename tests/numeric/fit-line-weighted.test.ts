import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { fitLineWeighted, lineUncertainties, weightedCentre } from "../../src/numeric/fit-line-weighted.ts";

test("three readings by hand: weights 4, 4, 1 give slope 7/3 and chi-squared 4/9", () => {
  // F² = 9, g0 = 5/3, h0 = 31/9, G² = 4, Σ w g h = 28/3; residuals 1/9, -2/9, 4/9. Absolute 1e-15: a few roundings.
  const fit = fitLineWeighted(Object.freeze([1, 2, 3]), Object.freeze([2, 4, 7]), Object.freeze([0.5, 0.5, 1]));
  expect(Math.abs(fit.slope - 7 / 3)).toBeLessThan(1e-15);
  expect(Math.abs(fit.intercept - -4 / 9)).toBeLessThan(1e-15);
  expect(Math.abs(fit.chiSquared - 4 / 9)).toBeLessThan(1e-15);
  expect(fit.degreesOfFreedom).toBe(1);
  expect(Math.abs(fit.slopeStandardUncertainty - 0.5)).toBeLessThan(1e-15);
});

test("equal uncertainties give the ordinary line", () => {
  const [x, y] = [
    [0, 1, 2, 3],
    [1, 3, 4, 8],
  ];
  const weighted = fitLineWeighted(x, y, [0.2, 0.2, 0.2, 0.2]);
  const ordinary = fitLine(x, y);
  expect(Math.abs(weighted.slope / ordinary.slope - 1)).toBeLessThan(1e-15);
  expect(Math.abs(weighted.intercept / ordinary.intercept - 1)).toBeLessThan(1e-14);
  expect(Math.abs(weighted.chiSquared / (1.8 / 0.04) - 1)).toBeLessThan(1e-14);
});

test("the weighted mean of 1 (twice) and 4 is 2", () => {
  expect(weightedCentre([1, 4], [2, 1])).toEqual({ mean: 2, deviations: [-1, 2] });
});

test("the uncertainties follow from the three sums", () => {
  expect(lineUncertainties(2, 4, 1)).toEqual({
    slopeStandardUncertainty: 1,
    interceptStandardUncertainty: 2.0615528128088303,
    covariance: -2,
  });
});

test("what determines no line, or an uncertainty of 0, is refused", () => {
  expect(() => fitLineWeighted([1, 2], [1, 2], [1, 0])).toThrow(RangeError);
  expect(() => fitLineWeighted([1, 2], [1, 2], [1, -1])).toThrow(RangeError);
  expect(() => fitLineWeighted([1, 2], [1, 2], [1])).toThrow(RangeError);
  expect(() => fitLineWeighted([0.1, 0.1, 0.1], [1, 2, 3], [1, 1, 1])).toThrow(RangeError);
  expect(() => fitLineWeighted([1, 2], [1, 2], [1, Number.NaN])).toThrow(RangeError);
});
