import { expect, test } from "vitest";
import { minimaxLine } from "../../src/numeric/minimax-line.ts";

test("the minimax line of the squares 0, 1, 4, 9 is 3x - 1 and leaves 1", () => {
  // Chord from 0 to 9 has slope 3; the lowest points under it, 1 and 4, lie 2 below: the line goes half way.
  const line = minimaxLine(Object.freeze([0, 1, 2, 3]), Object.freeze([0, 1, 4, 9]));
  expect(line).toEqual({ slope: 3, intercept: -1, greatestDeviation: 1, abscissaMean: 1.5, valueAtMean: 3.5 });
});

test("two points leave nothing", () => {
  expect(minimaxLine([1, 3], [2, 8])).toMatchObject({ slope: 3, intercept: -1, greatestDeviation: 0 });
});

test("readings at one abscissa bound the deviation by half their spread", () => {
  expect(minimaxLine([0, 1, 1, 2], [0, -3, 3, 0]).greatestDeviation).toBe(3);
  // Any slope from 3 to 5 does equally well here.
  expect(minimaxLine([0, 0, 1], [0, 2, 5]).greatestDeviation).toBe(1);
});

test("the order of the points does not matter", () => {
  expect(minimaxLine([3, 0, 2, 1], [9, 0, 4, 1])).toEqual(minimaxLine([0, 1, 2, 3], [0, 1, 4, 9]));
});

test("an offset of 1e9 on both axes changes neither slope nor deviation", () => {
  const far = minimaxLine([1e9, 1e9 + 1, 1e9 + 2, 1e9 + 3], [1e9, 1e9 + 1, 1e9 + 4, 1e9 + 9]);
  expect(far).toMatchObject({ slope: 3, greatestDeviation: 1, abscissaMean: 1e9 + 1.5, valueAtMean: 1e9 + 3.5 });
});

test("what determines no line is refused", () => {
  expect(() => minimaxLine([], [])).toThrow(RangeError);
  expect(() => minimaxLine([1], [1])).toThrow(RangeError);
  expect(() => minimaxLine([2, 2, 2], [1, 5, 9])).toThrow(RangeError);
  expect(() => minimaxLine([1, 2], [1, Number.NaN])).toThrow(RangeError);
});
