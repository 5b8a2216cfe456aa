import { expect, test } from "vitest";
import { doesScatterChange } from "../../../src/analysis/uncertainty/scatter-change.ts";

const distances = [0, 1, 2, 3, 4, 5];

test("a change is shown where R 4.2.2's summary(lm(size ~ distance)) has p < 0.05, whichever way", () => {
  // p = 0.00086, and 0.158.
  expect(doesScatterChange(distances, [1, 2, 4, 5, 5, 7])).toBe(true);
  expect(doesScatterChange(distances, [7, 5, 5, 4, 2, 1])).toBe(true);
  expect(doesScatterChange(distances, [3, 1, 4, 2, 5, 5])).toBe(false);
});

test("four sizes, two distances, or sizes that are all the same show none", () => {
  expect(doesScatterChange([0, 1, 2, 3], [1, 2, 3, 4])).toBe(false);
  expect(doesScatterChange([0, 0, 0, 1, 1, 1], [1, 1, 1, 5, 5, 5])).toBe(false);
  expect(doesScatterChange(distances, [0, 0, 0, 0, 0, 0])).toBe(false);
});
