import { expect, test } from "vitest";
import { fitLine, type LineFit } from "../../src/numeric/fit-line.ts";
import { lineInverse } from "../../src/numeric/line-inverse.ts";
import { lineStandardUncertainty, lineValue } from "../../src/numeric/line-value.ts";
import { mean } from "../../src/numeric/mean.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

type Published = Readonly<Record<string, number>>;

/** Half a unit of the last printed digit, with a hair for the binary form of the printed decimal. */
const printedTo = (lastDigit: number) => 0.5000001 * lastDigit;

const expectWithin = (value: number | null, published: number | undefined, tolerance: number, name: string) =>
  expect(Math.abs((value ?? Number.NaN) - (published ?? Number.NaN)), name).toBeLessThanOrEqual(tolerance);

const asUncertain = (fit: LineFit) => ({
  slope: fit.slope,
  intercept: fit.intercept,
  slopeStandardUncertainty: fit.slopeStdError!,
  interceptStandardUncertainty: fit.interceptStdError!,
  covariance: fit.covariance!,
});

test("linewidth calibration line: constants, variances and residual scatter as printed (NIST e-Handbook 2.3.6.7)", () => {
  const published = readExpected<Published>("nist-linewidth-calibration");
  const { x = [], y = [] } = readColumns("nist-linewidth-calibration");
  const fit = fitLine(x, y);
  expect(fit.n).toBe(40);
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  expectWithin(fit.intercept, published.intercept, printedTo(1e-7), "intercept");
  expectWithin(fit.slope, published.slope, printedTo(1e-7), "slope");
  expectWithin(fit.interceptStdError, published.interceptStdError, printedTo(1e-8), "intercept standard error");
  expectWithin(fit.slopeStdError, published.slopeStdError, printedTo(1e-8), "slope standard error");
  expectWithin(fit.interceptStdError! ** 2, published.interceptVariance, printedTo(1e-10), "intercept variance");
  expectWithin(fit.covariance, published.covariance, printedTo(1e-11), "covariance");
  expectWithin(fit.slopeStdError! ** 2, published.slopeVariance, printedTo(1e-11), "slope variance");
  expectWithin(fit.residualStdDev, published.residualStdDev, printedTo(1e-5), "residual standard deviation");
});

test("linewidth calibration line read backwards: the greatest uncertainty is the 0.068 printed", () => {
  const published = readExpected<{ inverse: [number, number, number][]; greatestInverseUncertainty: number }>(
    "nist-linewidth-calibration",
  );
  const { x = [], y = [] } = readColumns("nist-linewidth-calibration");
  const fit = fitLine(x, y);
  const readings = published.inverse.map(([ordinate, abscissa, uncertainty]) => {
    const reading = lineInverse(asUncertain(fit), ordinate, fit.residualStdDev!);
    expectWithin(reading.abscissa, abscissa, printedTo(1e-7), `abscissa at ${ordinate}`);
    expectWithin(reading.standardUncertainty, uncertainty, printedTo(1e-7), `uncertainty at ${ordinate}`);
    return reading.standardUncertainty;
  });
  expectWithin(Math.max(...readings), published.greatestInverseUncertainty, printedTo(1e-3), "greatest");
});

test("thermometer of GUM H.3: y1, y2, their uncertainties, correlation, and the correction at 30 °C", () => {
  const published = readExpected<Published>("gum-h3-thermometer");
  const { t_k_degC: temperatures = [], b_k_degC: corrections = [] } = readColumns("gum-h3-thermometer");
  const fit = fitLine(
    temperatures.map((temperature) => temperature - published.reference!),
    corrections,
  );
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  expectWithin(fit.intercept, published.intercept, printedTo(1e-4), "y1");
  expectWithin(fit.interceptStdError, published.interceptStdError, printedTo(1e-4), "u(y1)");
  expectWithin(fit.slope, published.slope, printedTo(1e-5), "y2");
  expectWithin(fit.slopeStdError, published.slopeStdError, printedTo(1e-5), "u(y2)");
  const correlation = fit.covariance! / (fit.interceptStdError! * fit.slopeStdError!);
  expectWithin(correlation, published.correlation, printedTo(1e-3), "correlation");
  const residualSumOfSquares = fit.residualStdDev! ** 2 * fit.degreesOfFreedom;
  expectWithin(residualSumOfSquares, published.residualSumOfSquares, printedTo(1e-15), "residual sum of squares");
  const at = published.at! - published.reference!;
  expectWithin(lineValue(fit, at), published.value, printedTo(1e-4), "b(30 °C)");
  expectWithin(lineStandardUncertainty(fit, at), published.valueUncertainty, printedTo(1e-4), "u of b(30 °C)");
});

test("Walpole and Myers: line, prediction at 21.5, and the abscissa of three readings hold 12 digits", () => {
  // Published to 15 or 16 digits; 12 are demanded, three being lost to sums over 33 rows of three-digit numbers.
  const published = readExpected<Published & { inverseFrom: number[] }>("walpole-myers");
  const { x = [], y = [] } = readColumns("walpole-myers");
  const fit = fitLine(x, y);
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  const { abscissa, standardUncertainty } = lineInverse(
    asUncertain(fit),
    mean(published.inverseFrom),
    fit.residualStdDev! / Math.sqrt(3),
  );
  const pairs: readonly (readonly [string, number | null])[] = [
    ["intercept", fit.intercept],
    ["slope", fit.slope],
    ["interceptStdError", fit.interceptStdError],
    ["slopeStdError", fit.slopeStdError],
    ["correlation", fit.covariance! / (fit.interceptStdError! * fit.slopeStdError!)],
    ["value", lineValue(fit, published.at!)],
    ["valueUncertainty", lineStandardUncertainty(fit, published.at!)],
    ["inverseAbscissa", abscissa],
    ["inverseUncertainty", standardUncertainty],
  ];
  for (const [name, value] of pairs) expect(correctDigits(value!, published[name]!), name).toBeGreaterThanOrEqual(12);
});

test("R's cars: the line, its scatter, and the 95 % band at 12, 19, 24 hold 12 digits", () => {
  const published = readExpected<Published & Record<"at" | "value" | "lower95" | "upper95", number[]>>("r-cars");
  const { speed = [], dist = [] } = readColumns("r-cars");
  const fit = fitLine(speed, dist);
  expect(fit.degreesOfFreedom).toBe(published.degreesOfFreedom);
  for (const name of [
    "slope",
    "intercept",
    "slopeStdError",
    "interceptStdError",
    "residualStdDev",
    "rSquared",
  ] as const)
    expect(correctDigits(fit[name]!, published[name]!), name).toBeGreaterThanOrEqual(12);
  const coverageFactor = studentTQuantile(0.975, fit.degreesOfFreedom);
  for (const [index, speedAt] of published.at.entries()) {
    const halfWidth = coverageFactor * lineStandardUncertainty(fit, speedAt)!;
    expect(correctDigits(lineValue(fit, speedAt), published.value[index]!)).toBeGreaterThanOrEqual(12);
    expect(correctDigits(lineValue(fit, speedAt) - halfWidth, published.lower95[index]!)).toBeGreaterThanOrEqual(12);
    expect(correctDigits(lineValue(fit, speedAt) + halfWidth, published.upper95[index]!)).toBeGreaterThanOrEqual(12);
  }
});

test("ISO/TS 28037 annex E: line from points of unknown common uncertainty", () => {
  const published = readExpected<Published & { fullDigits: Published }>("iso-28037-annex-e");
  const { x = [], y = [] } = readColumns("iso-28037-annex-e");
  const fit = fitLine(x, y);
  for (const name of [
    "slope",
    "intercept",
    "slopeStdError",
    "interceptStdError",
    "covariance",
    "residualStdDev",
  ] as const) {
    expectWithin(fit[name], published[name], printedTo(1e-3), name);
    // The full digits were recomputed by R, 12 or more of them.
    expect(correctDigits(fit[name]!, published.fullDigits[name]!), name).toBeGreaterThanOrEqual(11.5);
  }
});

test("Anscombe's four sets share one line and one R² and differ in their greatest residual", () => {
  const published = readExpected<{
    slope: number;
    intercept: number;
    residualStdDev: [number, number];
    rSquared: [number, number];
    greatestResidual: number[];
  }>("anscombe");
  const columns = readColumns("anscombe");
  for (const [index, greatestResidual] of published.greatestResidual.entries()) {
    const [x, y] = [columns[`x${index + 1}`]!, columns[`y${index + 1}`]!];
    const fit = fitLine(x, y);
    expectWithin(fit.slope, published.slope, printedTo(1e-3), "slope");
    expectWithin(fit.intercept, published.intercept, printedTo(1e-2), "intercept");
    const [leastScatter, mostScatter] = published.residualStdDev;
    expect(fit.residualStdDev).toBeGreaterThanOrEqual(leastScatter - printedTo(1e-3));
    expect(fit.residualStdDev).toBeLessThanOrEqual(mostScatter + printedTo(1e-3));
    expect(fit.rSquared).toBeGreaterThanOrEqual(published.rSquared[0] - printedTo(1e-4));
    expect(fit.rSquared).toBeLessThanOrEqual(published.rSquared[1] + printedTo(1e-4));
    const residuals = y.map((ordinate, row) => Math.abs(ordinate - lineValue(fit, x[row]!)));
    expectWithin(Math.max(...residuals), greatestResidual, printedTo(1e-4), `greatest residual of set ${index + 1}`);
  }
});
