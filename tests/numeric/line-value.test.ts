import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { lineStandardUncertainty, lineValue } from "../../src/numeric/line-value.ts";

const fit = fitLine([0, 1, 2, 3], [1, 3, 4, 8]);

test("the line 0.7 + 2.2 x stands at 9.5 where x is 4", () => {
  expect(Math.abs(lineValue(fit, 4) - 9.5)).toBeLessThan(2e-15);
});

test("its uncertainty there is √(0.9 (1/4 + 2.5²/5)), which is √1.35", () => {
  expect(Math.abs(lineStandardUncertainty(fit, 4)! / 1.161895003862225 - 1)).toBeLessThan(1e-15);
  expect(Math.abs(lineStandardUncertainty(fit, 4)! - Math.sqrt(1.35))).toBeLessThan(1e-15);
});

test("the covariance of the fit gives the same uncertainty by another road", () => {
  const at = -7;
  const variance = fit.interceptStdError! ** 2 + at ** 2 * fit.slopeStdError! ** 2 + 2 * at * fit.covariance!;
  expect(Math.abs(lineStandardUncertainty(fit, at)! / Math.sqrt(variance) - 1)).toBeLessThan(1e-14);
});

test("two readings leave the uncertainty of the line unknown", () => {
  expect(lineStandardUncertainty(fitLine([0, 1], [0, 1]), 0.5)).toBeNull();
});

test("far from the origin the line is read to the last digit or two", () => {
  const far = fitLine([1e9, 1e9 + 1, 1e9 + 2], [5, 6, 7]);
  expect(Math.abs(lineValue(far, 1e9 + 1.5) - 6.5)).toBeLessThan(1e-14);
});
