import { expect, test } from "vitest";
import { requireFinite, requirePoints } from "../../src/numeric/require-finite.ts";

test("a value that is not finite is refused by list and place", () => {
  expect(() => requireFinite("ordinates", [1, Number.NaN])).toThrow("ordinates: value 2 is not a finite number");
  expect(() => requireFinite("ordinates", [Number.POSITIVE_INFINITY])).toThrow(RangeError);
  expect(() => requireFinite("ordinates", [0, -0, 1e308])).not.toThrow();
});

test("lists that differ in length, too few points and a missing reading are refused", () => {
  expect(() => requirePoints([1, 2], [1], 2)).toThrow("2 abscissas but 1 ordinates");
  expect(() => requirePoints([1], [1], 2)).toThrow("1 points, at least 2 are needed");
  expect(() => requirePoints([1, 2], [1, Number.NaN], 2)).toThrow(RangeError);
  expect(() => requirePoints([1, 2], [1, 2], 2)).not.toThrow();
});
