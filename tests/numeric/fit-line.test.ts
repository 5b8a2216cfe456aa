import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";

const relative = (value: number | null, expected: number) => Math.abs((value ?? Number.NaN) / expected - 1);

test("four readings by hand: slope 2.2, intercept 0.7, residual variance 0.9", () => {
  // Σdx² = 5, Σdxdy = 11, residuals 0.3 0.1 -1.1 0.7 with squares adding up to 1.8 on 2 degrees of freedom, Σdy² = 26.
  const fit = fitLine(Object.freeze([0, 1, 2, 3]), Object.freeze([1, 3, 4, 8]));
  expect(fit.n).toBe(4);
  expect(fit.degreesOfFreedom).toBe(2);
  expect(fit.abscissaMean).toBe(1.5);
  expect(fit.ordinateMean).toBe(4);
  expect(fit.abscissaSumOfSquares).toBe(5);
  const hand = { slope: 2.2, intercept: 0.7, residualStdDev: 0.948683298050514, slopeStdError: Math.sqrt(0.9 / 5) };
  for (const [name, value] of Object.entries(hand))
    expect(relative(fit[name as keyof typeof hand], value), name).toBeLessThan(1e-15);
  expect(relative(fit.interceptStdError, Math.sqrt(0.9 / 4 + (1.5 ** 2 * 0.9) / 5))).toBeLessThan(1e-15);
  expect(relative(fit.covariance, (-1.5 * 0.9) / 5)).toBeLessThan(1e-15);
  expect(relative(fit.rSquared, 1 - 1.8 / 26)).toBeLessThan(1e-15);
});

test("two readings give a line and no judgement of its scatter", () => {
  const fit = fitLine([1, 3], [2, 8]);
  expect(fit).toMatchObject({ slope: 3, intercept: -1, degreesOfFreedom: 0, rSquared: 1 });
  expect(fit).toMatchObject({ slopeStdError: null, interceptStdError: null, covariance: null, residualStdDev: null });
});

test("a level line has no R², because there is nothing to explain", () => {
  expect(fitLine([1, 2, 3], [0.1, 0.1, 0.1])).toMatchObject({ slope: 0, rSquared: null });
});

test.each([1e3, 1e5, 1e6, 1e8])("an abscissa offset of %d costs the slope no digit", (offset) => {
  // Exact integers: true slope 16, no rounding in the data. Uncentred sums give 15.967 at 1e6.
  const run = Array.from({ length: 11 }, (_, index) => index);
  const fit = fitLine(
    run.map((step) => offset + step),
    run.map((step) => 4 + 16 * step),
  );
  expect(fit.slope).toBe(16);
  expect(fit.ordinateMean).toBe(84);
});

test("what determines no line is refused", () => {
  expect(() => fitLine([1, 2], [1, 2, 3])).toThrow(RangeError);
  expect(() => fitLine([1], [1])).toThrow(RangeError);
  expect(() => fitLine([0.1, 0.1, 0.1], [1, 2, 3])).toThrow(RangeError);
  expect(() => fitLine([1, 2, Number.POSITIVE_INFINITY], [1, 2, 3])).toThrow(RangeError);
  expect(() => fitLine([1, 2, 3], [1, Number.NaN, 3])).toThrow(RangeError);
});
