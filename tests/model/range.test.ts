import { expect, test } from "vitest";
import { greatestDistanceOf, spanOf } from "../../src/model/range.ts";

test("from 200 to 2000 mm the span is 1800 mm, also beside other words of the instrument", () => {
  expect(spanOf({ rangeLower: 200, rangeUpper: 2000 })).toBe(1800);
  expect(spanOf({ rangeLower: -300, rangeUpper: 200 })).toBe(500);
});

test("from -300 to 200 the greatest distance from zero is 300; from 150 to 400 it is 400", () => {
  expect(greatestDistanceOf({ rangeLower: -300, rangeUpper: 200 })).toBe(300);
  expect(greatestDistanceOf({ rangeLower: 150, rangeUpper: 400 })).toBe(400);
});
