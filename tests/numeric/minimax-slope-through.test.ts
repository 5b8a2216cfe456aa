import { expect, test } from "vitest";
import { minimaxSlopeThrough } from "../../src/numeric/minimax-slope-through.ts";

const origin = { abscissa: 0, ordinate: 0 };

test("through the origin, (1, 2) and (3, 3) are shared at slope 1.25 with 0.75 left", () => {
  // |2 - m| = |3 - 3m| between the tips m = 2 and m = 1: 2 - m = 3m - 3.
  expect(minimaxSlopeThrough(Object.freeze([1, 3]), Object.freeze([2, 3]), origin)).toEqual({
    slope: 1.25,
    greatestDeviation: 0.75,
  });
});

test("points on either side of the fixed point count alike", () => {
  expect(minimaxSlopeThrough([-1, 3], [-2, 3], origin)).toEqual({ slope: 1.25, greatestDeviation: 0.75 });
  expect(minimaxSlopeThrough([9, 13], [3, 8], { abscissa: 10, ordinate: 5 })).toEqual({
    slope: 1.25,
    greatestDeviation: 0.75,
  });
});

test("a reading at the fixed abscissa counts in the deviation and not in the slope", () => {
  expect(minimaxSlopeThrough([0, 1, 3], [-4, 2, 3], origin)).toEqual({ slope: 1.25, greatestDeviation: 4 });
});

test("one reading, or readings in line with the point, leave nothing", () => {
  expect(minimaxSlopeThrough([2], [5], origin)).toEqual({ slope: 2.5, greatestDeviation: 0 });
  expect(minimaxSlopeThrough([1, 2, 4], [3, 6, 12], origin)).toEqual({ slope: 3, greatestDeviation: 0 });
});

test("readings at the fixed abscissa alone determine no slope", () => {
  expect(() => minimaxSlopeThrough([0, 0], [1, 2], origin)).toThrow(RangeError);
  expect(() => minimaxSlopeThrough([], [], origin)).toThrow(RangeError);
  expect(() => minimaxSlopeThrough([1], [1], { abscissa: Number.NaN, ordinate: 0 })).toThrow(RangeError);
});
