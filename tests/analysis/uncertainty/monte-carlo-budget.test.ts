import { expect, test } from "vitest";
import { combineBudget, contribution, type Distribution } from "../../../src/analysis/uncertainty/budget.ts";
import { monteCarloBudget } from "../../../src/analysis/uncertainty/monte-carlo-budget.ts";
import { studentTQuantile } from "../../../src/numeric/student-t-quantile.ts";
import { howMany } from "../../how-many.ts";

const seed = Uint8Array.from({ length: 32 }, (_, index) => (index * 201 + 99) % 256);
/** What is allowed shrinks with their number, which must not be under 10⁴/(1 − p). */
const DRAWS = howMany(300_000, 1_000_000);

const line = (distribution: Distribution, value: number, more: object = {}) =>
  contribution({ source: distribution, value, unit: "mm", distribution, ...more });
const checked = (...lines: Parameters<typeof combineBudget>[0]) =>
  monteCarloBudget(combineBudget(lines), DRAWS, seed, 0);

test("one normal contribution of 2 mm with k = 2: a half-width of 2.000 mm, which agrees within 0.05 mm", () => {
  const found = checked(line("normal", 2, { divisor: 2 }));
  // u = 1.0 is 10·10⁻¹, so δ = 0.05 (JCGM 101, 7.9.2).
  expect(found.numericalTolerance).toBe(0.05);
  expect(Math.abs(found.halfWidth - 2)).toBeLessThan(4 * found.halfWidthUncertainty);
  expect(Math.abs(found.standardUncertainty - 1)).toBeLessThan(4 / Math.sqrt(2 * DRAWS));
  expect(found.high - found.low).toBe(2 * found.halfWidth);
  expect(found.agrees).toBe(true);
  expect(found.reason).toBeNull();
});

test("what chance leaves open in the half-width is √(p(1 − p)/n) over twice the density at its end", () => {
  const found = checked(line("normal", 1, { divisor: 1 }));
  const density = Math.exp(-2) / Math.sqrt(2 * Math.PI);
  const expected = Math.sqrt((0.9545 * 0.0455) / DRAWS) / (2 * density);
  // Taken from some 400 draws between two ends, so itself good to about 10 %.
  expect(Math.abs(found.halfWidthUncertainty / expected - 1)).toBeLessThan(0.3);
});

test.each([
  [0.099, 0.0005],
  [0.0996, 0.005],
  [31.66, 0.5],
  [2.5e-7, 0.5e-8],
])("for a standard uncertainty of %d the numerical tolerance is %d", (value, tolerance) => {
  const found = checked(line("normal", value, { divisor: 1 }));
  expect(Math.abs(found.numericalTolerance / tolerance - 1)).toBeLessThan(1e-14);
});

test("a scatter of few readings is drawn from Student's t, whose interval is k·u", () => {
  const found = checked(line("normal", 1, { divisor: 1, degreesOfFreedom: 4 }));
  expect(Math.abs(found.halfWidth - studentTQuantile(0.97725, 4))).toBeLessThan(4 * found.halfWidthUncertainty);
  // The deviation of Student's t, √(ν/(ν − 2)) = √2; its fourth moment has no bound at 4, so loosely.
  expect(Math.abs(found.standardUncertainty - Math.SQRT2)).toBeLessThan(0.05);
  expect(found.agrees).toBe(true);
});

test.each<[Distribution, object]>([
  ["rectangular", {}],
  ["rectangular", { divisor: 1 }],
  ["triangular", {}],
  ["arcsine", {}],
  ["trapezoidal", { edgeParameter: 0 }],
  ["trapezoidal", { edgeParameter: 0.4 }],
  ["trapezoidal", { edgeParameter: 1 }],
])("the draws of a %s contribution %o spread as its standard uncertainty says", (distribution, more) => {
  const stated = line(distribution, 3, { sensitivity: -0.7, ...more });
  const found = checked(stated);
  // Four standard errors of a deviation, √((κ − 1)/(4n)), kurtosis κ at most 2.4 (triangular).
  const standardError = stated.standardUncertainty * Math.sqrt(1.4 / (4 * DRAWS));
  expect(Math.abs(found.standardUncertainty - stated.standardUncertainty)).toBeLessThan(4 * standardError);
});

test("two equal rectangular contributions are a triangle, and their budget agrees", () => {
  const found = checked(line("rectangular", 1), line("rectangular", 1));
  // Triangle on ±2: 95 % lie inside 2·(1 − √0.05).
  expect(Math.abs(found.halfWidth - 2 * (1 - Math.sqrt(0.05)))).toBeLessThan(4 * found.halfWidthUncertainty);
  expect(found.agrees).toBe(true);
});

test("a budget whose k is too small for its shape is found out, with the reason", () => {
  // One rectangular contribution and a normal one of 0.29 of it: by S9.14 dominant, but 95 % of the sum reach further.
  const found = checked(line("rectangular", Math.sqrt(3)), line("normal", 0.29, { divisor: 1 }));
  // 1.79580 by quadrature of the two shapes (scipy 1.17.1).
  expect(Math.abs(found.halfWidth - 1.7958)).toBeLessThan(4 * found.halfWidthUncertainty);
  expect(found.agrees).toBe(false);
  expect(found.reason).toMatch(
    /^drawing gives 1\.79\d, the budget 1\.713; they may differ by 0\.05: the contributions/,
  );
});

test("a triangular contribution alone does not agree with a normal k, with the reason", () => {
  const found = checked(line("triangular", 1));
  expect(found.agrees).toBe(false);
  expect(found.reason).toMatch(/the sum of the contributions is not normal$/);
});

test("a difference that chance could make is said to be one", () => {
  const budget = combineBudget([line("normal", 0.994, { divisor: 1 })]);
  // δ = 0.005 of 1.99, and 220 000 draws leave 0.004 open: one seed in five disagrees.
  const found = Array.from({ length: howMany(16, 40) }, (_, stream) => monteCarloBudget(budget, 220_000, seed, stream));
  const apart = found.filter(({ agrees }) => !agrees);
  expect(apart.length).toBeGreaterThan(0);
  expect(apart.length).toBeLessThan(found.length / 2);
  for (const { reason } of apart) expect(reason).toMatch(/220000 draws are too few to tell more from chance$/);
});

test("fewer draws than 10⁴/(1 − p) are refused", () => {
  const budget = combineBudget([line("normal", 1, { divisor: 1 })]);
  expect(() => monteCarloBudget(budget, 219_000, seed, 0)).toThrow("too few");
  expect(() => monteCarloBudget(budget, Number.NaN, seed, 0)).toThrow(RangeError);
});
