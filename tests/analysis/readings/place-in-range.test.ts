import { describe, expect, test } from "vitest";
import { hasTolerance, partOfTolerance, pointAt, worstPoint } from "../../../src/analysis/readings/place-in-range.ts";

const point = (at: number, toleranceLow = -5, toleranceHigh = 5) =>
  Object.freeze({ point: at, errorDistance: at / 100, expandedUncertainty: 0.2, toleranceLow, toleranceHigh });

describe("a test point of another record is the same place", () => {
  const points = Object.freeze([point(100), point(599), point(620), point(1000)]);

  test("within 2 % of span, the nearest of several", () => {
    expect(pointAt(points, 600, 1800)?.point).toBe(599);
    expect(pointAt(points, 612, 1800)?.point).toBe(620);
    expect(pointAt(points, 136, 1800)?.point).toBe(100);
  });

  test("and not beyond", () => {
    expect(pointAt(points, 136.1, 1800)).toBeUndefined();
    expect(pointAt([], 100, 1800)).toBeUndefined();
  });
});

test("the part of the tolerance is taken on the side of the error", () => {
  expect(partOfTolerance(-1, -2, 5)).toBe(0.5);
  expect(partOfTolerance(1, -2, 5)).toBe(0.2);
  expect(partOfTolerance(6, -2, 5)).toBe(1.2);
  expect(partOfTolerance(0, 0, 0)).toBe(0);
  expect(partOfTolerance(0.1, -1, 0)).toBe(Number.POSITIVE_INFINITY);
});

describe("the worst test point", () => {
  const at = (place: number, errorDistance: number, limit: number) =>
    Object.freeze({ ...point(place, -limit, limit), errorDistance });

  test("is the one that takes up the most of its tolerance, not the one with the greatest error", () => {
    expect(worstPoint([at(0, 1, 5), at(9, -4, 5), at(90, 6, 50)])).toEqual({ point: at(9, -4, 5), part: 0.8 });
  });

  test("is never one without a tolerance", () => {
    expect(hasTolerance(at(0, 3, 0))).toBe(false);
    expect(worstPoint([at(0, 3, 0), at(9, 1, 5)])?.part).toBe(0.2);
    expect(worstPoint([at(0, 3, 0)])).toBeUndefined();
  });

  test("is the first of equals", () => {
    expect(worstPoint([at(0, 1, 5), at(9, -1, 5)])?.point.point).toBe(0);
  });
});
