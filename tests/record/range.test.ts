import { expect, test } from "vitest";
import { isSameRange, type OverRange } from "../../src/record/range.ts";

const range: OverRange = Object.freeze({ distanceUnit: "mm", rangeLower: 0, rangeUpper: 100 });

test("a range is the same where both ends and the unit are", () => {
  expect(isSameRange(range, { ...range })).toBe(true);
});

test.each<Partial<OverRange>>([{ rangeLower: 1 }, { rangeUpper: 99 }, { distanceUnit: "cm" }])(
  "%j is another range",
  (change) => {
    expect(isSameRange(range, { ...range, ...change })).toBe(false);
  },
);

test("the same stretch in another unit counts as another range", () => {
  expect(isSameRange(range, { distanceUnit: "cm", rangeLower: 0, rangeUpper: 10 })).toBe(false);
});
