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

test("the median of many is the middle of them sorted, odd and even, with ties", () => {
  for (const length of [201, 202, 1000, 45_451]) {
    const values = Array.from({ length }, (_, place) => Math.sin(place * place) + (place % 7 === 0 ? 3 : 0));
    const sorted = values.toSorted((one, other) => one - other);
    const [lower, upper] = [sorted[(length - 1) >> 1]!, sorted[length >> 1]!];
    expect(median(values)).toBe(length % 2 === 1 ? upper : (lower + upper) / 2);
  }
});
