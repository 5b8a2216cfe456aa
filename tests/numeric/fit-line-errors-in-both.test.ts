import { expect, test } from "vitest";
import { fitLineErrorsInBoth } from "../../src/numeric/fit-line-errors-in-both.ts";
import { fitLineWeighted } from "../../src/numeric/fit-line-weighted.ts";

const same = (value: number, count: number) => Array.from({ length: count }, () => value);
const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

test("three points on the diagonal: slope 1 through the origin, u(slope) = 1", () => {
  // Every weight is 1/(1 + 1²) = 1/2, the sum of squares about the mean is 1/2 · 2 = 1.
  const fit = fitLineErrorsInBoth(
    Object.freeze({
      abscissas: [0, 1, 2],
      ordinates: [0, 1, 2],
      abscissaUncertainties: [1, 1, 1],
      ordinateUncertainties: [1, 1, 1],
    }),
  );
  expect(fit).toMatchObject({ slope: 1, intercept: 0, slopeStandardUncertainty: 1, chiSquared: 0 });
});

test("equal uncertainties everywhere give the orthogonal line, known in closed form", () => {
  // Slope from Sxx, Syy, Sxy: (Syy − Sxx + √((Syy − Sxx)² + 4 Sxy²)) / (2 Sxy); relative 1e-14, some 50 roundings.
  const [abscissas, ordinates] = [
    [0, 1, 2, 3],
    [1, 3, 4, 8],
  ];
  const uncertainties = { abscissaUncertainties: same(0.3, 4), ordinateUncertainties: same(0.3, 4) };
  const fit = fitLineErrorsInBoth({ abscissas, ordinates, ...uncertainties });
  const orthogonal = (26 - 5 + Math.sqrt((26 - 5) ** 2 + 4 * 11 ** 2)) / (2 * 11);
  expect(relative(fit.slope, orthogonal)).toBeLessThan(1e-14);
  expect(relative(fit.intercept, 4 - 1.5 * orthogonal)).toBeLessThan(1e-14);
});

test("exact abscissas give the weighted line", () => {
  const [abscissas, ordinates, ordinateUncertainties] = [
    [1, 2, 3, 5],
    [2, 4, 7, 9],
    [0.5, 0.5, 1, 0.7],
  ];
  const both = fitLineErrorsInBoth({ abscissas, ordinates, abscissaUncertainties: same(0, 4), ordinateUncertainties });
  const weighted = fitLineWeighted(abscissas, ordinates, ordinateUncertainties);
  for (const [name, value] of Object.entries(weighted))
    expect(relative(both[name as keyof typeof weighted], value), name).toBeLessThan(1e-13);
});

test("the sum of squares is least at the line found: any step away adds to it", () => {
  const points = {
    abscissas: [1.2, 1.9, 2.9, 4.0, 4.7, 5.9],
    ordinates: [3.4, 4.4, 7.2, 8.5, 10.8, 13.5],
    abscissaUncertainties: same(0.2, 6),
    ordinateUncertainties: [0.2, 0.2, 0.2, 0.4, 0.4, 0.4],
  };
  const fit = fitLineErrorsInBoth(points);
  const chiSquared = (slope: number, intercept: number) =>
    points.abscissas.reduce((total, x, index) => {
      const u = points.ordinateUncertainties[index]!;
      return total + (points.ordinates[index]! - intercept - slope * x) ** 2 / (u * u + slope * slope * 0.04);
    }, 0);
  expect(relative(fit.chiSquared, chiSquared(fit.slope, fit.intercept))).toBeLessThan(1e-13);
  for (const [slopeStep, interceptStep] of [
    [1e-5, 0],
    [-1e-5, 0],
    [0, 1e-5],
    [0, -1e-5],
    [1e-5, -3e-5],
    [-1e-5, 3e-5],
  ] as const)
    expect(chiSquared(fit.slope + slopeStep, fit.intercept + interceptStep)).toBeGreaterThan(fit.chiSquared);
});

test("what determines no line is refused", () => {
  const points = { abscissas: [1, 2], ordinates: [1, 2], abscissaUncertainties: [1, 1], ordinateUncertainties: [1, 1] };
  expect(() => fitLineErrorsInBoth({ ...points, abscissaUncertainties: [1, -1] })).toThrow(RangeError);
  expect(() => fitLineErrorsInBoth({ ...points, abscissaUncertainties: [1] })).toThrow(RangeError);
  expect(() => fitLineErrorsInBoth({ ...points, abscissas: [2, 2] })).toThrow(RangeError);
  const exact = { abscissaUncertainties: [0, 1], ordinateUncertainties: [0, 1] };
  expect(() => fitLineErrorsInBoth({ ...points, ...exact })).toThrow(RangeError);
});
