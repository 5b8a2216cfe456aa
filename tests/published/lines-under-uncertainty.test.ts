import { expect, test } from "vitest";
import { type Figure, isDetermined } from "../../src/analysis/figures/figure.ts";
import { zeroAndSpanError } from "../../src/analysis/figures/zero-and-span-error.ts";
import { lineUnderUncertainty } from "../../src/analysis/uncertainty/line-under-uncertainty.ts";
import { zeroAndSpanUncertainty } from "../../src/analysis/uncertainty/zero-and-span-uncertainty.ts";
import type { Standard } from "../../src/model/calibration.ts";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { basis } from "../analysis/sample-basis.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

const nothingShared = { commonReferenceUncertainty: 0, commonOutputUncertainty: 0 };
const halfOfThirdDecimal = 0.50001e-3;

function determined<Value>(figure: Figure<Value>): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

test("ISO/TS 28037 6.3: a line whose outputs are good to 0.5, its chi-squared, and 10.5 read backwards", () => {
  type Published = Record<string, number> & { fullDigits: Record<string, number>; inverse: Record<string, number> };
  const published = readExpected<Published>("iso-28037-weighted");
  const { x = [], y = [], y_uncertainty: [outputUncertainty = 0] = [] } = readColumns("iso-28037-weighted");
  const readings = { references: x, outputs: y, referenceUncertainty: 0, outputUncertainty, ...nothingShared };
  const line = determined(lineUnderUncertainty(readings, [published.inverse.ordinate!]));
  for (const name of [
    "slope",
    "intercept",
    "slopeStandardUncertainty",
    "interceptStandardUncertainty",
    "covariance",
    "chiSquared",
  ] as const) {
    expect(Math.abs(line[name] - published[name]!), name).toBeLessThan(halfOfThirdDecimal);
    expect(correctDigits(line[name], published.fullDigits[name]!), name).toBeGreaterThanOrEqual(11.5);
  }
  // The document's limit for 4 degrees of freedom, to its three decimals.
  expect(Math.abs(line.chiSquaredLimit - 9.488)).toBeLessThan(halfOfThirdDecimal);
  expect(line.isStraight).toBe(true);
  const [inverse] = line.inverse;
  expect(Math.abs(inverse!.reference - published.inverse.abscissa!)).toBeLessThan(halfOfThirdDecimal);
  expect(Math.abs(inverse!.standardUncertainty - published.inverse.standardUncertainty!)).toBeLessThan(
    halfOfThirdDecimal,
  );
  expect(correctDigits(inverse!.standardUncertainty, published.inverse.standardUncertaintyFullDigits!)).toBeGreaterThan(
    13,
  );
});

/**
 * The six points of ISO/TS 28037 7.4 with one uncertainty for all outputs, as readings of a phase have it (the document
 * gives two, 0.2 and 0.4; with those the fit itself is checked in uncertain-lines.test.ts). Then the line has a closed
 * form, a second road: W. E. Deming, Statistical Adjustment of Data (1943), with δ = u²(y)/u²(x),
 * b = (Syy − δ·Sxx + √((Syy − δ·Sxx)² + 4·δ·Sxy²)) / (2·Sxy), chi² = Σ(y − a − b·x)² / (u²(y) + b²·u²(x)).
 */
test("with errors in both the line is Deming's, whose closed form needs no iteration", () => {
  const { x = [], y = [] } = readColumns("iso-28037-errors-in-both");
  for (const [referenceUncertainty, outputUncertainty] of [
    [0.2, 0.2],
    [0.2, 0.4],
    [0.05, 0.3],
  ] as const) {
    const readings = { references: x, outputs: y, referenceUncertainty, outputUncertainty, ...nothingShared };
    const line = determined(lineUnderUncertainty(readings, []));
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const products = (one: readonly number[], other: readonly number[]) =>
      one.reduce((sum, value, index) => sum + (value - mean(one)) * (other[index]! - mean(other)), 0);
    const ratio = (outputUncertainty / referenceUncertainty) ** 2;
    const difference = products(y, y) - ratio * products(x, x);
    const across = products(x, y);
    const slope = (difference + Math.sqrt(difference ** 2 + 4 * ratio * across ** 2)) / (2 * across);
    const intercept = mean(y) - slope * mean(x);
    const variance = outputUncertainty ** 2 + slope ** 2 * referenceUncertainty ** 2;
    const chiSquared = x.reduce((sum, at, index) => sum + (y[index]! - intercept - slope * at) ** 2 / variance, 0);
    expect(line.method).toBe("errors in both");
    // Sums of six terms in another order; the intercept is a difference of numbers ten times its size.
    expect(correctDigits(line.slope, slope)).toBeGreaterThan(13);
    expect(correctDigits(line.intercept, intercept)).toBeGreaterThan(12);
    expect(correctDigits(line.chiSquared, chiSquared)).toBeGreaterThan(12);
  }
});

test("GUM H.3.6: a common 0.005 °C makes 0.00577 °C of the 0.00288 °C of the line at 20 °C", () => {
  const published = readExpected<Record<string, number>>("gum-h3-common-uncertainty");
  const { t_k_degC: temperatures = [], b_k_degC: corrections = [] } = readColumns("gum-h3-thermometer");
  const readings = temperatures.map((reference, index) => ({
    ...{ point: reference, reference, direction: "rising" as const, cycle: 1 },
    error: corrections[index]!,
  }));
  // A range that begins at y1's 20 °C; with a span of 100, percent of span are degrees.
  const { zeroError, spanError } = determined(zeroAndSpanError(readings, 20, 120));
  expect(correctDigits(zeroError.standardUncertainty!, published.interceptStandardUncertainty!)).toBeGreaterThan(11);
  // A thermometer of u = 0.005, the same at every temperature (b = 0), whose display has no steps.
  const thermometer: Standard = {
    ...{ standard: "T-1", certificate: "EX-1", calibratedOn: "2026-01-14", dueOn: "2027-01-14" },
    ...{ expandedUncertainty: 2 * published.commonStandardUncertainty!, coverageFactor: 2, uncertaintyUnit: "mm" },
    ...{ relativeUncertainty: 0, resolution: 0, driftPerYear: 0 },
  };
  const common = { ...basis, standards: [thermometer], judged: "counts", steps: { reference: 0, output: 0 } } as const;
  const { zero, span } = determined(zeroAndSpanUncertainty(readings, common, { rangeLower: 20, rangeUpper: 120 }));
  // All of it was read once: what cycles differ by is taken as large as the scatter about the line, and stands beside.
  const assumed = fitLine(temperatures, corrections).residualStdDev!;
  const withoutIt = Math.sqrt(zero.combined ** 2 - assumed ** 2);
  expect(correctDigits(withoutIt, published.combinedUncertainty!)).toBeGreaterThan(11);
  const fourths = published.interceptStandardUncertainty! ** 4 + assumed ** 4;
  expect(Math.abs(zero.effectiveDegreesOfFreedom / (zero.combined ** 4 / (fourths / 9)) - 1)).toBeLessThan(1e-9);
  // The document leaves u(y2) as it is, for an effect that is the same everywhere.
  expect(correctDigits(span.combined, spanError.standardUncertainty!)).toBeGreaterThan(11);
  expect(zero.widened).toBeGreaterThan(zero.combined);
});

test("linewidths (NIST e-Handbook 2.3.6.7): calibrated values and their uncertainties along the line", () => {
  const published = readExpected<{ inverse: [number, number, number][] }>("nist-linewidth-calibration");
  const { x = [], y = [] } = readColumns("nist-linewidth-calibration");
  // The page takes the scatter about the line for the uncertainty of one reading.
  const outputUncertainty = fitLine(x, y).residualStdDev!;
  const readings = { references: x, outputs: y, referenceUncertainty: 0, outputUncertainty, ...nothingShared };
  const outputs = published.inverse.map(([output]) => output);
  const line = determined(lineUnderUncertainty(readings, outputs));
  for (const [index, [, reference, uncertainty]] of published.inverse.entries()) {
    expect(Math.abs(line.inverse[index]!.reference - reference)).toBeLessThan(0.51e-7);
    expect(Math.abs(line.inverse[index]!.standardUncertainty - uncertainty)).toBeLessThan(0.51e-7);
  }
  // Weighed by its own scatter, chi-squared is its degrees of freedom.
  expect(correctDigits(line.chiSquared, 38)).toBeGreaterThan(12);
});
