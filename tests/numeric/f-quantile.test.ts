import { expect, test } from "vitest";
import { chiSquaredQuantile } from "../../src/numeric/chi-squared-quantile.ts";
import { fQuantile } from "../../src/numeric/f-quantile.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";

test("95 % of F with 4 and 10 degrees of freedom lie at or below 3.478049690765229 (R 4.2.2, qf)", () => {
  expect(Math.abs(fQuantile(0.95, 4, 10) / 3.478049690765229 - 1)).toBeLessThan(1e-12);
});

// R 4.2.2, qf(p, df1, df2), printed to 16 digits; 1e-12 is the accuracy that both programs claim for it.
test.each([
  [0.95, 1, 1, 161.4476387975882],
  [0.95, 9, 84, 1.993312030127206],
  [0.975, 20, 2, 39.44791130337825],
  [0.99, 3, 500, 3.820996578589327],
  [0.05, 7, 11, 0.2775436181435573],
  [0.95, 2.5, 3.7, 7.295883750572825],
])("p %s with %s and %s degrees of freedom", (probability, above, below, expected) => {
  expect(Math.abs(fQuantile(probability, above, below) / expected - 1)).toBeLessThan(1e-11);
});

test("one degree of freedom above is Student's t squared; unlimited ones below are chi-squared", () => {
  for (const freedom of [1, 3, 17, 240])
    expect(Math.abs(fQuantile(0.95, 1, freedom) / studentTQuantile(0.975, freedom) ** 2 - 1)).toBeLessThan(1e-11);
  expect(fQuantile(0.95, 6, Number.POSITIVE_INFINITY)).toBe(chiSquaredQuantile(0.95, 6) / 6);
  expect(Math.abs(fQuantile(0.95, 6, 999_999) / fQuantile(0.95, 6, 1_000_001) - 1)).toBeLessThan(1e-5);
});

test("what is no probability and no degrees of freedom is refused", () => {
  for (const probability of [0, 1, Number.NaN]) expect(() => fQuantile(probability, 4, 4)).toThrow(RangeError);
  for (const freedom of [0, -1, Number.NaN]) {
    expect(() => fQuantile(0.95, freedom, 4)).toThrow(RangeError);
    expect(() => fQuantile(0.95, 4, freedom)).toThrow(RangeError);
  }
  expect(() => fQuantile(0.95, Number.POSITIVE_INFINITY, 4)).toThrow(RangeError);
});
