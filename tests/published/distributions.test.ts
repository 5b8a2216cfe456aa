import { expect, test } from "vitest";
import { normalCumulative, normalQuantile } from "../../src/numeric/normal-distribution.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";
import { correctDigits, readExpected } from "./read-data.ts";

type Table = Readonly<Record<string, string>>;
const { t, z, c } = readExpected<{ t: Table; z: Table; c: Table }>("student-t", "quantiles.json");

test("Student's t holds 13 digits at 22 degrees of freedom, fractions among them, and 5 probabilities (mpmath)", () => {
  expect(Object.keys(t)).toHaveLength(110);
  for (const [key, value] of Object.entries(t)) {
    const [degreesOfFreedom, probability] = key.split("|").map(Number);
    expect(correctDigits(studentTQuantile(probability!, degreesOfFreedom!), Number(value)), key).toBeGreaterThan(13);
  }
});

test("coverage factors for 95.45 % are those printed in EA-4/02", () => {
  // EA-4/02 M:2022, degrees of freedom and k, three decimals: half a unit of the last.
  const printed = { 1: 13.968, 2: 4.527, 3: 3.307, 4: 2.869, 5: 2.649, 8: 2.366, 10: 2.284, 20: 2.133, 50: 2.051 };
  for (const [degreesOfFreedom, factor] of Object.entries(printed))
    expect(Math.abs(studentTQuantile(0.97725, Number(degreesOfFreedom)) - factor)).toBeLessThan(0.51e-3);
});

test("the normal quantile holds 14 digits in the middle, 11 at 1e-6, 6 at 1e-12 (mpmath)", () => {
  // Towards a probability of 1, and at 0.5000001, the double itself no longer holds the probability to more.
  const digits: Readonly<Record<string, number>> = { "0.5000001": 9, "0.999999": 11, "0.000001": 11, "1e-12": 6 };
  expect(Object.keys(z)).toHaveLength(9);
  for (const [probability, value] of Object.entries(z))
    expect(correctDigits(normalQuantile(Number(probability)), Number(value)), probability).toBeGreaterThan(
      digits[probability] ?? 14,
    );
});

test("normal probabilities hold 14 digits from -8 to 5 standard deviations (mpmath)", () => {
  // -8 lies where one rounding of the exponent's square, 32, counts 32 times: 13.
  expect(Object.keys(c)).toHaveLength(11);
  for (const [value, probability] of Object.entries(c))
    expect(correctDigits(normalCumulative(Number(value)), Number(probability)), value).toBeGreaterThan(13.5);
});
