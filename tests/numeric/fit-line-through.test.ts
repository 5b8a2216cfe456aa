import { expect, test } from "vitest";
import { fitLineThrough } from "../../src/numeric/fit-line-through.ts";

test("NoInt2 by hand: slope 8/11, and R² about the origin (NIST StRD)", () => {
  const fit = fitLineThrough(Object.freeze([4, 5, 6]), Object.freeze([3, 4, 4]));
  expect(Math.abs(fit.slope - 0.7272727272727273)).toBeLessThan(2e-16);
  expect(Math.abs(fit.rSquared! - 0.993348115299335)).toBeLessThan(1e-15);
  expect(fit.degreesOfFreedom).toBe(2);
});

test("moving the fixed point and the readings together changes nothing", () => {
  const moved = fitLineThrough([104, 105, 106], [-47, -46, -46], { abscissa: 100, ordinate: -50 });
  expect(moved).toEqual(fitLineThrough([4, 5, 6], [3, 4, 4]));
});

test("one reading gives a slope and no judgement of its scatter", () => {
  expect(fitLineThrough([2], [5])).toEqual({
    n: 1,
    slope: 2.5,
    slopeStdError: null,
    residualStdDev: null,
    degreesOfFreedom: 0,
    rSquared: 1,
  });
  expect(fitLineThrough([2, 3], [0, 0]).rSquared).toBeNull();
});

test("readings at the fixed point alone determine no slope", () => {
  expect(() => fitLineThrough([3, 3], [1, 2], { abscissa: 3, ordinate: 0 })).toThrow(RangeError);
  expect(() => fitLineThrough([], [])).toThrow(RangeError);
});
