import { expect, test } from "vitest";
import { median } from "../../src/numeric/median.ts";

test("the middle of an odd count, the mean of the two in the middle of an even one, whatever the order", () => {
  expect(median(Object.freeze([3, 1, 10, 2]))).toBe(2.5);
  expect(median([5])).toBe(5);
  expect(median([9, -1, 100])).toBe(9);
  expect(median([10, 9, 1, 100, 2])).toBe(9);
});

test("no value or one that is not finite is refused", () => {
  expect(() => median([])).toThrow(RangeError);
  expect(() => median([1, Number.NaN])).toThrow("value 2 is not a finite number");
});
