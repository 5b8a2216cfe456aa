import { expect, test } from "vitest";
import { testUncertaintyRatio } from "../../../src/verdict/decision/test-uncertainty-ratio.ts";

test("a tolerance of ±9 and an expanded uncertainty of 3 are three to one", () => {
  expect(testUncertaintyRatio({ low: -9, high: 9 }, 3)).toBe(3);
});

test("of limits that differ the mean counts", () => {
  expect(testUncertaintyRatio({ low: -1, high: 3 }, 0.5)).toBe(4);
});

test("no tolerance is a ratio of 0", () => {
  expect(testUncertaintyRatio({ low: 0, high: 0 }, 0.5)).toBe(0);
});

test("no uncertainty, and limits that are none, are refused", () => {
  for (const uncertainty of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => testUncertaintyRatio({ low: -1, high: 1 }, uncertainty)).toThrow(RangeError);
  expect(() => testUncertaintyRatio({ low: 1, high: -1 }, 1)).toThrow(RangeError);
  expect(() => testUncertaintyRatio({ low: Number.NEGATIVE_INFINITY, high: 1 }, 1)).toThrow(RangeError);
});
