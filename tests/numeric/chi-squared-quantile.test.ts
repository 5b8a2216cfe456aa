import { expect, test } from "vitest";
import { chiSquaredQuantile } from "../../src/numeric/chi-squared-quantile.ts";
import { normalQuantile } from "../../src/numeric/normal-distribution.ts";

test("95 % of chi-squared with 4 degrees of freedom lie at or below 9.487729036781154 (R 4.2.2, qchisq)", () => {
  expect(Math.abs(chiSquaredQuantile(0.95, 4) / 9.487729036781154 - 1)).toBeLessThan(1e-14);
});

test("one and two degrees of freedom agree with their closed forms", () => {
  for (const probability of [0.01, 0.5, 0.95, 0.999]) {
    const ofOne = normalQuantile((1 + probability) / 2) ** 2;
    const ofTwo = -2 * Math.log1p(-probability);
    expect(Math.abs(chiSquaredQuantile(probability, 1) / ofOne - 1)).toBeLessThan(1e-12);
    expect(Math.abs(chiSquaredQuantile(probability, 2) / ofTwo - 1)).toBeLessThan(1e-12);
  }
});

test("what is no probability, and no or unlimited degrees of freedom, are refused", () => {
  for (const probability of [0, 1, -0.1, Number.NaN])
    expect(() => chiSquaredQuantile(probability, 4)).toThrow(RangeError);
  for (const degreesOfFreedom of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => chiSquaredQuantile(0.95, degreesOfFreedom)).toThrow(RangeError);
});

test("a quantile too small for a double is refused, never 0", () => {
  expect(() => chiSquaredQuantile(1e-10, 1e-3)).toThrow(RangeError);
});
