import { expect, test } from "vitest";
import { lineInverse } from "../../src/numeric/line-inverse.ts";

const line = Object.freeze({
  slope: 2,
  intercept: 1,
  slopeStandardUncertainty: 0.1,
  interceptStandardUncertainty: 0.3,
  covariance: -0.02,
});

test("the line 1 + 2x is at 5 where x is 2, with u² = (0.09 + 0.04 − 0.08 + 0.16) / 4", () => {
  const { abscissa, standardUncertainty } = lineInverse(line, 5, 0.4);
  expect(abscissa).toBe(2);
  expect(Math.abs(standardUncertainty / 0.22912878474779197 - 1)).toBeLessThan(1e-15);
  expect(Math.abs(standardUncertainty - Math.sqrt(0.21 / 4))).toBeLessThan(1e-15);
});

test("a falling line has a positive uncertainty all the same", () => {
  expect(lineInverse({ ...line, slope: -2 }, 5, 0.4).standardUncertainty).toBeGreaterThan(0);
});

test("a level line and impossible uncertainties are refused", () => {
  expect(() => lineInverse({ ...line, slope: 0 }, 5, 0.4)).toThrow(RangeError);
  expect(() => lineInverse(line, 5, -0.4)).toThrow(RangeError);
  expect(() => lineInverse(line, Number.NaN, 0.4)).toThrow(RangeError);
});
