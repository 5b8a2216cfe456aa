import { expect, test } from "vitest";
import { fitLineErrorsInBoth } from "../../src/numeric/fit-line-errors-in-both.ts";
import { fitLineWeighted } from "../../src/numeric/fit-line-weighted.ts";
import { lineInverse } from "../../src/numeric/line-inverse.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

const names = [
  "slope",
  "intercept",
  "slopeStandardUncertainty",
  "interceptStandardUncertainty",
  "covariance",
  "chiSquared",
] as const;
type Line = Readonly<Record<(typeof names)[number], number>>;
type PublishedLine = Line & { readonly fullDigits: Line; readonly degreesOfFreedom: number };

const halfOfThirdDecimal = 0.50001e-3;

test("ISO/TS 28037 6.3: the weighted line and chi-squared as printed, and to the digits recomputed by R", () => {
  const published = readExpected<PublishedLine>("iso-28037-weighted");
  const { x = [], y = [], y_uncertainty: uncertainties = [] } = readColumns("iso-28037-weighted");
  const fit = fitLineWeighted(x, y, uncertainties);
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  for (const name of names) {
    expect(Math.abs(fit[name] - published[name]), name).toBeLessThan(halfOfThirdDecimal);
    expect(correctDigits(fit[name], published.fullDigits[name]), name).toBeGreaterThanOrEqual(11.5);
  }
});

test("ISO/TS 28037: 10.5 (0.5) on that line was measured at 4.913 (0.322)", () => {
  const { inverse } = readExpected<{ inverse: Record<string, number> }>("iso-28037-weighted");
  const { x = [], y = [], y_uncertainty: uncertainties = [] } = readColumns("iso-28037-weighted");
  const line = fitLineWeighted(x, y, uncertainties);
  const reading = lineInverse(line, inverse.ordinate!, inverse.ordinateStandardUncertainty!);
  expect(Math.abs(reading.abscissa - inverse.abscissa!)).toBeLessThan(halfOfThirdDecimal);
  expect(Math.abs(reading.standardUncertainty - inverse.standardUncertainty!)).toBeLessThan(halfOfThirdDecimal);
  expect(correctDigits(reading.abscissa, inverse.abscissaFullDigits!)).toBeGreaterThanOrEqual(13);
  expect(correctDigits(reading.standardUncertainty, inverse.standardUncertaintyFullDigits!)).toBeGreaterThanOrEqual(13);
});

test("ISO/TS 28037 7.4: the line with uncertainties along both axes as printed, and to 13 digits as recomputed", () => {
  const published = readExpected<PublishedLine>("iso-28037-errors-in-both");
  const columns = readColumns("iso-28037-errors-in-both");
  const fit = fitLineErrorsInBoth({
    abscissas: columns.x!,
    ordinates: columns.y!,
    abscissaUncertainties: columns.x_uncertainty!,
    ordinateUncertainties: columns.y_uncertainty!,
  });
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  const printed: Line = {
    slope: 1e-3, // quoted cut off at three decimals, not rounded
    intercept: 0.50001e-4,
    slopeStandardUncertainty: 0.50001e-4,
    interceptStandardUncertainty: 0.50001e-4,
    covariance: 0.50001e-4,
    chiSquared: halfOfThirdDecimal,
  };
  for (const name of names) {
    expect(Math.abs(fit[name] - published[name]), name).toBeLessThan(printed[name]);
    // The minimum found by mpmath at 40 digits. Two or three digits of a double go into sums of six terms.
    expect(correctDigits(fit[name], published.fullDigits[name]), name).toBeGreaterThanOrEqual(13);
  }
});

test("Pearson's data with York's weights: the line holds every published digit", () => {
  const published = readExpected<PublishedLine & { reducedChiSquared: number }>("pearson-york");
  const { x = [], wx = [], y = [], wy = [] } = readColumns("pearson-york");
  const fit = fitLineErrorsInBoth({
    abscissas: x,
    ordinates: y,
    abscissaUncertainties: wx.map((weight) => 1 / Math.sqrt(weight)),
    ordinateUncertainties: wy.map((weight) => 1 / Math.sqrt(weight)),
  });
  expect(fit.degreesOfFreedom).toBe(8);
  // Half a unit of the last printed digit: 11 decimals of the line, 9 and 10 of its errors.
  expect(Math.abs(fit.intercept - published.intercept)).toBeLessThan(0.51e-11);
  expect(Math.abs(fit.slope - published.slope)).toBeLessThan(0.51e-11);
  expect(Math.abs(fit.interceptStandardUncertainty - published.interceptStandardUncertainty)).toBeLessThan(0.51e-9);
  expect(Math.abs(fit.slopeStandardUncertainty - published.slopeStandardUncertainty)).toBeLessThan(0.51e-10);
  expect(Math.abs(fit.chiSquared / 8 - published.reducedChiSquared)).toBeLessThan(0.51e-9);
  // The minimum found by mpmath at 40 digits.
  for (const name of names)
    expect(correctDigits(fit[name], published.fullDigits[name]), name).toBeGreaterThanOrEqual(13);
});
