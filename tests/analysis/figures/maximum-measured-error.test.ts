import { expect, test } from "vitest";
import { maximumMeasuredError } from "../../../src/analysis/figures/maximum-measured-error.ts";

const at = (point: number, up: number | null, down: number | null) =>
  Object.freeze({ point, reference: point, up, down, mean: 0 });

test("up 0.1 and down -0.3 at 5: -0.3 at 5, falling", () => {
  expect(maximumMeasuredError([{ point: 5, reference: 5, up: 0.1, down: -0.3, mean: -0.1 }])).toEqual({
    percentSpan: -0.3,
    point: 5,
    direction: "falling",
  });
});

test("the farthest of all points keeps its sign and its direction", () => {
  const curve = [at(0, -0.2, 0.1), at(5, -0.7, null), at(9, 0.6, 0.5)];
  expect(maximumMeasuredError(curve)).toEqual({ percentSpan: -0.7, point: 5, direction: "rising" });
});

test("of several equally far it is the first by rising distance, rising before falling", () => {
  expect(maximumMeasuredError([at(0, 0.5, -0.5), at(5, 0.5, 0.5)])).toMatchObject({ point: 0, direction: "rising" });
});

test("an error of 0 everywhere is a figure; no test point is none", () => {
  expect(maximumMeasuredError([at(3, 0, 0)])).toEqual({ percentSpan: 0, point: 3, direction: "rising" });
  expect(maximumMeasuredError([])).toEqual({ notDetermined: "no usable reading" });
});
