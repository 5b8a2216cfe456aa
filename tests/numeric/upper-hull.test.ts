import { expect, test } from "vitest";
import { upperHull } from "../../src/numeric/upper-hull.ts";

const points = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([abscissa, ordinate]) => ({ abscissa, ordinate }));

test("the string over four points rests on three of them", () => {
  expect(upperHull(points([2, 1], [0, 0], [3, 0], [1, 2]))).toEqual(points([0, 0], [1, 2], [3, 0]));
});

test("of points at one abscissa the highest counts, and points on a straight line are no corners", () => {
  expect(upperHull(points([1, 5], [1, 7], [1, 6]))).toEqual(points([1, 7]));
  expect(upperHull(points([0, 0], [1, 1], [2, 2], [3, 3]))).toEqual(points([0, 0], [3, 3]));
  expect(upperHull(points([0, -9], [2, -9], [0, 3], [2, 1]))).toEqual(points([0, 3], [2, 1]));
});

test("points that sag leave the ends only, and none leave none", () => {
  expect(upperHull(points([0, 0], [1, -1], [2, -1], [3, 0]))).toEqual(points([0, 0], [3, 0]));
  expect(upperHull([])).toEqual([]);
});
