import fc from "fast-check";
import { expect, test } from "vitest";
import { joined, type LimitedError, outsideStretches } from "../../../src/analysis/figures/outside-stretches.ts";
import { howMany } from "../../how-many.ts";

const at = (reference: number, error: number, limit = 1): LimitedError => ({
  reference,
  error,
  low: -limit,
  high: limit,
});

test("an error that grows from 0 to 4 over 100 crosses a limit of 1 at 25", () => {
  expect(outsideStretches([at(0, 0), at(100, 4)])).toEqual([{ from: 25, to: 100 }]);
});

test("a swing from below to above leaves the limits twice", () => {
  // −3 + 6x/60 meets −1 at 20 and +1 at 40.
  expect(outsideStretches([at(0, -3), at(60, 3)])).toEqual([
    { from: 0, to: 20 },
    { from: 40, to: 60 },
  ]);
});

test("a limit that grows with the distance is met where both lines cross", () => {
  // error 2 throughout, limit 1 + x/50: crosses at 50.
  expect(outsideStretches([at(0, 2, 1), at(100, 2, 3)])).toEqual([{ from: 0, to: 50 }]);
});

test("one point alone outside reaches as far as the lines to its neighbours; on the limit is inside", () => {
  expect(outsideStretches([at(0, 0), at(10, 2), at(20, 0)])).toEqual([{ from: 5, to: 15 }]);
  expect(outsideStretches([at(0, 1), at(10, -1)])).toEqual([]);
  expect(outsideStretches([at(0, 9)])).toEqual([]);
});

test("stretches that touch become one, in any order", () => {
  expect(
    joined([
      { from: 5, to: 9 },
      { from: 0, to: 5 },
    ]),
  ).toEqual([{ from: 0, to: 9 }]);
  expect(
    joined([
      { from: 8, to: 9 },
      { from: 0, to: 5 },
    ]),
  ).toEqual([
    { from: 0, to: 5 },
    { from: 8, to: 9 },
  ]);
});

test("a place lies in a stretch exactly where the interpolated error is outside (random places)", () => {
  const curve = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 2, maxLength: 8 });
  fc.assert(
    fc.property(curve, fc.double({ min: 0, max: 1, noNaN: true }), (errors, part) => {
      const points = errors.map((error, index) => at(10 * index, error / 10));
      const x = part * 10 * (errors.length - 1);
      const left = Math.min(Math.floor(x / 10), errors.length - 2);
      const [e0, e1] = [errors[left]! / 10, errors[left + 1]! / 10];
      const error = e0 + ((e1 - e0) * (x - 10 * left)) / 10;
      fc.pre(Math.abs(Math.abs(error) - 1) > 1e-9);
      const isInside = outsideStretches(points).some(({ from, to }) => from <= x && x <= to);
      expect(isInside).toBe(Math.abs(error) > 1);
    }),
    { numRuns: howMany(3000, 10_000), seed: 20261125 },
  );
});
