import { expect, test } from "vitest";
import { isInside } from "../../src/units/is-inside.ts";

const limits = { low: 12, high: 30 };

test("on a limit is inside, a part in a million beyond it is not", () => {
  expect([12, 30, 20].map((value) => isInside(value, limits))).toEqual([true, true, true]);
  expect(isInside(12 - 12e-6, limits)).toBe(false);
  expect(isInside(30 + 30e-6, limits)).toBe(false);
  expect(isInside(0.1 + 0.2, { low: null, high: 0.3 })).toBe(true);
  expect(isInside(0.3, { low: 0.1 + 0.2, high: null })).toBe(true);
  expect(isInside(-1e9, { low: null, high: 30 })).toBe(true);
  expect(isInside(1e9, { low: 12, high: null })).toBe(true);
  expect(isInside(-5.1, { low: -5, high: null })).toBe(false);
});

test("where a magnitude is given the allowance is a part of that, on both sides and at a limit of zero", () => {
  expect(isInside(9 + 1e-13, { low: -9, high: 9 }, 1800)).toBe(true);
  expect(isInside(9 + 1e-8, { low: -9, high: 9 }, 1800)).toBe(false);
  expect(isInside(-1e-13, { low: 0, high: null }, 1)).toBe(true);
  expect(isInside(-1e-13, { low: 0, high: null })).toBe(false);
});
