import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { fitLineThrough } from "../../src/numeric/fit-line-through.ts";
import { mean } from "../../src/numeric/mean.ts";
import { sampleStandardDeviation } from "../../src/numeric/sample-standard-deviation.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

// Certified to 15 digits. Doubles hold 16 and the sums of some dozens of terms cost two or three: 12 are demanded.

test("Norris: slope, intercept, their standard errors and the residual scatter hold 12 digits", () => {
  const certified = readExpected<Record<string, number>>("nist-norris");
  const { x = [], y = [] } = readColumns("nist-norris");
  expect(x).toHaveLength(36);
  const fit = fitLine(x, y);
  expect(fit.degreesOfFreedom).toBe(certified.degreesOfFreedom);
  for (const name of [
    "slope",
    "intercept",
    "slopeStdError",
    "interceptStdError",
    "residualStdDev",
    "rSquared",
  ] as const)
    expect(correctDigits(fit[name]!, certified[name]!), name).toBeGreaterThanOrEqual(12);
  // The covariance is GSL's, which agrees with R's to 10 digits only.
  expect(correctDigits(fit.covariance!, certified.covariance!)).toBeGreaterThanOrEqual(10);
});

test.each(["nist-noint1", "nist-noint2"])("%s: the line through the origin holds 12 digits, R² uncentred", (source) => {
  const certified = readExpected<Record<string, number>>(source);
  const { x = [], y = [] } = readColumns(source);
  const fit = fitLineThrough(x, y);
  expect(fit.degreesOfFreedom).toBe(certified.degreesOfFreedom);
  for (const name of ["slope", "slopeStdError", "residualStdDev", "rSquared"] as const)
    expect(correctDigits(fit[name]!, certified[name]!), name).toBeGreaterThanOrEqual(12);
});

test.each([
  ["nist-mavro", 12],
  ["nist-michelso", 13],
  ["nist-lew", 14],
] as const)("%s: mean and standard deviation hold the digits that doubles allow", (source, digits) => {
  // Mavro's readings of 2 scatter by 4e-4, so their own rounding costs the standard deviation 3 to 4 digits.
  const certified = readExpected<{ n: number; mean: number; standardDeviation: number }>(source);
  const { y = [] } = readColumns(source);
  expect(y).toHaveLength(certified.n);
  expect(correctDigits(mean(y), certified.mean)).toBeGreaterThanOrEqual(15);
  expect(correctDigits(sampleStandardDeviation(y), certified.standardDeviation)).toBeGreaterThanOrEqual(digits);
});

type Series = {
  name: string;
  first: number;
  low: number;
  high: number;
  pairs: number;
  mean: number;
  standardDeviation: number;
};

const seriesOf = ({ first, low, high, pairs }: Series) => [
  first,
  ...Array.from({ length: pairs }, () => [low, high]).flat(),
];

// What exact arithmetic makes of the doubles nearest to the decimals of each series, and so the most digits of the
// certified value that any program can reach: see SOURCE.md.
const reachable: Readonly<Record<string, { exactOfDoubles: number; digits: number }>> = {
  NumAcc1: { exactOfDoubles: 1, digits: 16 },
  NumAcc2: { exactOfDoubles: 0.1, digits: 15 },
  NumAcc3: { exactOfDoubles: 0.1000000000349246, digits: 9.4 },
  NumAcc4: { exactOfDoubles: 0.10000000055879354, digits: 8.2 },
};

test.each(readExpected<Series[]>("nist-numacc"))(
  "$name: not a digit is lost beyond what the decimals lost",
  (series) => {
    const values = seriesOf(series);
    const { exactOfDoubles, digits } = reachable[series.name]!;
    expect(correctDigits(mean(values), series.mean)).toBeGreaterThanOrEqual(15.5);
    const standardDeviation = sampleStandardDeviation(values);
    expect(correctDigits(standardDeviation, series.standardDeviation)).toBeGreaterThanOrEqual(digits);
    expect(correctDigits(standardDeviation, exactOfDoubles)).toBeGreaterThanOrEqual(15);
  },
);
