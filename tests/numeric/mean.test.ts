import { expect, test } from "vitest";
import { mean } from "../../src/numeric/mean.ts";

test("the mean of NumAcc1 is exact (NIST StRD)", () => {
  expect(mean(Object.freeze([10000001, 10000003, 10000002]))).toBe(10000002);
});

test("a large value that cancels leaves the small ones whole, where a plain sum would lose them", () => {
  expect(mean([1, 1e100, 1, -1e100])).toBe(0.5);
});

test("no values have no mean, and a missing reading is refused", () => {
  expect(() => mean([])).toThrow(RangeError);
  expect(() => mean([1, Number.NaN])).toThrow(RangeError);
});
