import { expect, test } from "vitest";
import { pooledScatter } from "../../../src/analysis/years/pooled-scatter.ts";

/** Residuals of a line through three visits a year apart are a multiple of these. */
const bend = [1, -2, 1];
const bent = (by: number) => bend.map((one) => one * by);

test("two points that a visit moves alike tell no more than one: s = 0.1 · √6, one degree of freedom", () => {
  const [first, second] = pooledScatter([
    { distance: 0, residuals: bent(0.1) },
    { distance: 10, residuals: bent(0.1) },
  ]);
  // The shift alone: A = 2 · 0.06 of one degree of freedom, and half of it at either point.
  expect(Math.abs((first?.standardDeviation ?? 9) - Math.sqrt(0.06))).toBeLessThan(1e-15);
  expect(first?.degreesOfFreedom).toBe(1);
  expect(second).toEqual(first);
});

test("one test point has its own scatter, of its records less two", () => {
  const residuals = [0.3, -0.1, -0.5, 0.1, 0.2];
  const [only] = pooledScatter([{ distance: 7, residuals }]);
  const squares = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  expect(Math.abs((only?.standardDeviation ?? 9) - Math.sqrt(squares / 3))).toBeLessThan(1e-15);
  expect(Math.abs((only?.degreesOfFreedom ?? 9) - 3)).toBeLessThan(1e-14);
});

test("by hand: 1, 2 and 3 at 0, 10 and 20 are a shift of 2 and a tilt of 1, with nothing left", () => {
  const [low, middle, high] = pooledScatter([
    { distance: 0, residuals: bent(1) },
    { distance: 10, residuals: bent(2) },
    { distance: 20, residuals: bent(3) },
  ]);
  // Mean 2: A = 3 · 2² · 6 = 72; slope on (−1, 0, 1)/√2 is √2: B = 2 · 6 = 12; all together 6 · (1 + 4 + 9) = 84: C = 0.
  // At the ends s² = 72/3 + 12/2 = 30, ν = 30²/(24² + 6²); in the middle s² = 24, ν = 1.
  expect(Math.abs((low?.standardDeviation ?? 9) - Math.sqrt(30))).toBeLessThan(1e-14);
  expect(Math.abs((low?.degreesOfFreedom ?? 9) - 900 / 612)).toBeLessThan(1e-14);
  expect(Math.abs((middle?.standardDeviation ?? 9) - Math.sqrt(24))).toBeLessThan(1e-14);
  expect(middle?.degreesOfFreedom).toBe(1);
  expect(high).toEqual(low);
});

test("where nothing scatters there is none, and series of other lengths are a caller's mistake", () => {
  expect(pooledScatter([{ distance: 0, residuals: [0, 0, 0, 0] }])).toEqual([
    { standardDeviation: 0, degreesOfFreedom: 2 },
  ]);
  expect(() => pooledScatter([{ distance: 0, residuals: [0, 0] }])).toThrow(RangeError);
  expect(() => pooledScatter([])).toThrow(RangeError);
  expect(() =>
    pooledScatter([
      { distance: 0, residuals: bend },
      { distance: 1, residuals: [1, -1, -1, 1] },
    ]),
  ).toThrow(RangeError);
});
