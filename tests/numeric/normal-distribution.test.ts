import { expect, test } from "vitest";
import { normalCumulative, normalQuantile } from "../../src/numeric/normal-distribution.ts";

test("1.96 standard deviations hold 97.5 %, to the last digit or two", () => {
  expect(Math.abs(normalCumulative(1.96) - 0.9750021048517795)).toBeLessThan(3e-16);
  expect(Math.abs(normalQuantile(0.975) - 1.959963984540054)).toBeLessThan(1e-15);
});

test("the ends of the axis hold nothing and everything", () => {
  expect(normalCumulative(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(normalCumulative(Number.POSITIVE_INFINITY)).toBe(1);
});

test("quantile and probability undo each other", () => {
  // An error of the quantile (12 digits at 1e-6) counts z² times in the probability: 23 times there.
  for (const probability of [1e-6, 0.02, 0.31, 0.5, 0.77, 0.999])
    expect(Math.abs(normalCumulative(normalQuantile(probability)) / probability - 1)).toBeLessThan(1e-10);
});

test("what is no probability or no number is refused", () => {
  for (const probability of [0, 1, -0.1, Number.NaN]) expect(() => normalQuantile(probability)).toThrow(RangeError);
  expect(() => normalCumulative(Number.NaN)).toThrow(RangeError);
});
