import { expect, test } from "vitest";
import { sampleStandardDeviation } from "../../src/numeric/sample-standard-deviation.ts";

test("NumAcc1 scatters by exactly 1 (NIST StRD)", () => {
  expect(sampleStandardDeviation(Object.freeze([10000001, 10000003, 10000002]))).toBe(1);
});

test("the divisor is n - 1: the sample value of 1 to 6 is the root of 3.5, not of 17.5/6", () => {
  expect(Math.abs(sampleStandardDeviation([1, 2, 3, 4, 5, 6]) - Math.sqrt(3.5))).toBeLessThan(4e-16);
});

test("equal readings have no scatter at all, whatever their binary digits", () => {
  expect(sampleStandardDeviation([0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1])).toBe(0);
});

test("one reading tells nothing of scatter, and a missing one is refused", () => {
  expect(() => sampleStandardDeviation([5])).toThrow(RangeError);
  expect(() => sampleStandardDeviation([5, Number.NaN])).toThrow(RangeError);
});
