import fc from "fast-check";
import { expect, test } from "vitest";
import { gapShare, placesOf, testPointsOf, widePoints } from "../../src/model/test-points.ts";

const at = (...references: number[]) => Object.freeze(references.map((reference) => Object.freeze({ reference })));
const members = (points: ReturnType<typeof testPointsOf>) => points.map((point) => point.members);

test("readings within 2 % of span of each other are one test point", () => {
  expect(gapShare).toBe(0.02);
  expect(members(testPointsOf(at(0, 50, 0.4), 100))).toEqual([[0, 2], [1]]);
});

test("a gap of exactly 2 % of span does not part readings, a greater one does", () => {
  expect(members(testPointsOf(at(0, 2), 100))).toEqual([[0, 1]]);
  expect(members(testPointsOf(at(0, 2.001), 100))).toEqual([[0], [1]]);
});

test("the nominal position is the column point where every reading has it, else the mean reference", () => {
  const named = [
    { point: 50, reference: 49.9 },
    { point: 0, reference: 0.1 },
    { point: 50, reference: 50.3 },
  ];
  expect(testPointsOf(named, 100)).toEqual([
    { nominal: 0, members: [1] },
    { nominal: 50, members: [0, 2] },
  ]);
  expect(testPointsOf(at(10, 10.5), 100)).toEqual([{ nominal: 10.25, members: [0, 1] }]);
});

test("one reading without its position makes the gaps decide for all", () => {
  const mixed = [{ point: 50, reference: 0 }, { reference: 0.5 }, { point: 50, reference: 50 }];
  expect(members(testPointsOf(mixed, 100))).toEqual([[0, 1], [2]]);
});

test("named points are kept apart even where their readings touch", () => {
  const near = [
    { point: 50, reference: 50.4 },
    { point: 51, reference: 50.5 },
  ];
  expect(members(testPointsOf(near, 100))).toEqual([[0], [1]]);
});

test("readings that run together over more than 2 % of span are no one position", () => {
  const readings = at(0, 1.5, 3, 50);
  const wide = widePoints(testPointsOf(readings, 100), readings, 100);
  expect(members(wide)).toEqual([[0, 1, 2]]);
});

test("where every reading names its position nothing is too wide", () => {
  const readings = [0, 1.5, 3].map((reference) => ({ reference, point: 0 }));
  expect(widePoints(testPointsOf(readings, 100), readings, 100)).toEqual([]);
});

test("places are counted apart by more than 2 % of span, in any order, however a decimal number is stored", () => {
  const places = (points: readonly number[], span: number) => placesOf(points, points, span);
  expect(places([6, 1.03, 1, 1.02, 1.01], 5)).toBe(2);
  expect(places([0, 25, 50, 75, 100], 100)).toBe(5);
  // Each within 2 % of the next: of 0, 1.5, 3, 4.5, 6 no more than three are apart.
  expect(places([0, 1.5, 3, 4.5, 6], 100)).toBe(3);
  expect(0.9 - 0.7).toBeGreaterThan(0.2);
  expect(places([0.7, 0.9], 10)).toBe(1);
  expect(places([0.7, 0.91], 10)).toBe(2);
  expect(places([], 10)).toBe(0);
});

test("places are no more than the distances that were read, whatever the points are called", () => {
  expect(placesOf([0, 25, 50, 75, 100], [100, 0, 100, 0, 100], 100)).toBe(2);
  expect(placesOf([0, 50, 100], [-3, 0, 3, 47, 50, 53, 97, 100, 103], 100)).toBe(3);
});

test("no readings are no test points", () => {
  expect(testPointsOf([], 100)).toEqual([]);
});

test("each reading is in one test point, whatever the order of the rows", () => {
  const distances = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(distances, (references) => {
      const points = testPointsOf(at(...references), 100);
      const indices = members(points).flat();
      expect(indices.toSorted((a, b) => a - b)).toEqual(references.map((_, index) => index));
      const grouped = (list: readonly number[]) =>
        members(testPointsOf(at(...list), 100)).map((group) =>
          group.map((index) => list[index] ?? 0).toSorted((a, b) => a - b),
        );
      expect(grouped(references.toReversed())).toEqual(grouped(references));
    }),
    { seed: 20261125 },
  );
});

test("a quarter of a million readings at one position are held without running out of stack", () => {
  const readings = Array.from({ length: 250_000 }, (_, index) => ({ reference: (index % 4) / 1000 }));
  expect(widePoints(testPointsOf(readings, 100), readings, 100)).toEqual([]);
});
