import { expect, test } from "vitest";
import { normalQuantile } from "../../src/numeric/normal-distribution.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";

test("at 10 degrees of freedom the coverage factor for 95.45 % is 2.2837 (mpmath)", () => {
  expect(Math.abs(studentTQuantile(0.97725, 10) / 2.283681613299642 - 1)).toBeLessThan(1e-13);
});

test("one and two degrees of freedom agree with their closed forms", () => {
  const probability = 0.995;
  const ofOne = Math.tan(Math.PI * (probability - 0.5));
  const ofTwo = (2 * probability - 1) / Math.sqrt(2 * probability * (1 - probability));
  expect(Math.abs(studentTQuantile(probability, 1) / ofOne - 1)).toBeLessThan(1e-12);
  expect(Math.abs(studentTQuantile(probability, 2) / ofTwo - 1)).toBeLessThan(1e-12);
});

test("under one half the quantile is the mirror image", () => {
  expect(studentTQuantile(0.5, 3)).toBe(0);
  expect(Math.abs(studentTQuantile(0.025, 7) + studentTQuantile(0.975, 7))).toBeLessThan(1e-14);
});

test.each([1e12, 1e15, 1e16, 1e17, 1e300, Number.POSITIVE_INFINITY])(
  "at %d degrees of freedom the normal quantile is met, never 0",
  (degreesOfFreedom) => {
    // Student's t exceeds the normal quantile by the share (z² + 1)/(4 ν): 1.2e-12 at ν = 1e12.
    expect(Math.abs(studentTQuantile(0.975, degreesOfFreedom) / normalQuantile(0.975) - 1)).toBeLessThan(2e-12);
  },
);

test("what has no finite quantile is refused", () => {
  for (const probability of [0, 1, Number.NaN]) expect(() => studentTQuantile(probability, 5)).toThrow(RangeError);
  for (const degreesOfFreedom of [0, -1, Number.NaN, 0.001])
    expect(() => studentTQuantile(0.975, degreesOfFreedom)).toThrow(RangeError);
});
