import fc from "fast-check";
import { expect, test } from "vitest";
import { type Contribution, combineBudget, contribution } from "../../../src/analysis/uncertainty/budget.ts";
import { normalQuantile } from "../../../src/numeric/normal-distribution.ts";

const normal = (standardUncertainty: number, degreesOfFreedom = Number.POSITIVE_INFINITY): Contribution =>
  Object.freeze(
    contribution({
      source: "normal",
      value: standardUncertainty,
      unit: "mm",
      distribution: "normal",
      divisor: 1,
      degreesOfFreedom,
    }),
  );
const rectangular = (standardUncertainty: number, degreesOfFreedom = Number.POSITIVE_INFINITY): Contribution =>
  Object.freeze(
    contribution({
      source: "rectangular",
      value: standardUncertainty,
      unit: "mm",
      distribution: "rectangular",
      divisor: 1,
      degreesOfFreedom,
    }),
  );

const near = (value: number, expected: number, relative = 1e-14) =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(relative);

test("0.2 mm with k = 2 and a scatter of 0.1 mm with 4 degrees of freedom give 0.3067 mm", () => {
  const budget = combineBudget([
    contribution({ source: "standard", value: 0.2, unit: "mm", distribution: "normal", divisor: 2 }),
    contribution({
      source: "scatter",
      value: 0.1,
      unit: "mm",
      distribution: "normal",
      divisor: 1,
      degreesOfFreedom: 4,
    }),
  ]);
  near(budget.combinedUncertainty, Math.SQRT2 / 10);
  // (0.02)² / (0.0001/4) = 16 by hand; a sum that rounds to just under 16 must still be looked up at 16.
  near(budget.effectiveDegreesOfFreedom, 16);
  // Student's t, 97.725 % one-sided, 16 degrees of freedom (mpmath): 2.16867…; times √0.02.
  expect(Math.abs(budget.coverageFactor - 2.169)).toBeLessThan(0.5e-3);
  expect(Math.abs(budget.expandedUncertainty - 0.3067)).toBeLessThan(0.5e-4);
  expect(budget.coverageProbability).toBe(0.9545);
  expect(budget.coverageBasis).toBe("Student t");
  expect(budget.lines.map(({ source }) => source)).toEqual(["standard", "scatter"]);
  for (const { share } of budget.lines) near(share, 0.5);
});

test("a whole number of degrees of freedom is looked up as itself, though its sum may round to just under it", () => {
  const found: number[] = [];
  for (let each = 1; each <= 100; each++) {
    for (const count of [2, 3, 5, 7]) {
      // Equal contributions of ν degrees of freedom have n·ν together.
      const budget = combineBudget(Array.from({ length: count }, () => normal(0.3, each)));
      near(budget.effectiveDegreesOfFreedom, count * each);
      expect(budget.coverageFactor, `${count} of ${each}`).toBe(
        combineBudget([normal(1, count * each)]).coverageFactor,
      );
      found.push(budget.effectiveDegreesOfFreedom - count * each);
    }
  }
  expect(found.some((difference) => difference < 0)).toBe(true);
});

test("a fraction of a degree of freedom is cut off, so k is never the smaller of the two", () => {
  expect(combineBudget([normal(1, 10.99)]).coverageFactor).toBe(combineBudget([normal(1, 10)]).coverageFactor);
});

test("above 10⁴ degrees of freedom k is that of the normal distribution, 2.0000", () => {
  for (const budget of [combineBudget([normal(1)]), combineBudget([normal(1, 10_001)])]) {
    expect(budget.coverageBasis).toBe("normal");
    near(budget.coverageFactor, normalQuantile(0.97725));
    expect(Math.abs(budget.coverageFactor - 2)).toBeLessThan(5e-6);
  }
  expect(combineBudget([normal(1)]).effectiveDegreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  expect(combineBudget([normal(1, 10_000)]).coverageBasis).toBe("Student t");
});

test("one rectangular contribution dominates as long as the rest is at most 0.3 of it", () => {
  const budget = combineBudget([normal(0.2999), rectangular(1)]);
  expect(budget.coverageBasis).toBe("one dominant rectangular contribution");
  expect(budget.coverageProbability).toBe(0.95);
  near(budget.coverageFactor, 0.95 * Math.sqrt(3));
  near(budget.expandedUncertainty, 0.95 * Math.sqrt(3 * (1 + 0.2999 ** 2)));
  expect(combineBudget([normal(0.3001), rectangular(1)]).coverageBasis).toBe("normal");
  expect(combineBudget([rectangular(2)]).coverageBasis).toBe("one dominant rectangular contribution");
});

test("two rectangular contributions dominate as long as the rest is at most 0.35 of both", () => {
  const rest = (part: number) => normal(part * Math.hypot(1, 0.8));
  const budget = combineBudget([rectangular(0.8), rest(0.3499), rectangular(1)]);
  expect(budget.coverageBasis).toBe("two dominant rectangular contributions");
  expect(budget.coverageProbability).toBe(0.95);
  // β = 0.2/1.8 = 1/9, so k = [1 − √(0.05·80/81)] / √(82/81/6) by hand.
  near(budget.coverageFactor, (1 - Math.sqrt((0.05 * 80) / 81)) / Math.sqrt(82 / 486), 1e-13);
  expect(combineBudget([rectangular(0.8), rest(0.3501), rectangular(1)]).coverageBasis).toBe("normal");
});

test("a second rectangular contribution smaller than the rest does not dominate", () => {
  expect(combineBudget([rectangular(1), rectangular(0.33), normal(0.34)]).coverageBasis).toBe("normal");
  expect(combineBudget([rectangular(1), rectangular(0.35), normal(0.34)]).coverageBasis).toBe(
    "two dominant rectangular contributions",
  );
});

test("a dominant contribution of another shape, or a half-width of few degrees of freedom, earns no smaller k", () => {
  const triangular = contribution({ source: "triangular", value: 1, unit: "mm", distribution: "triangular" });
  expect(combineBudget([triangular]).coverageBasis).toBe("normal");
  expect(combineBudget([rectangular(1, 8)]).coverageBasis).toBe("Student t");
});

test("order does not matter, and another unit of distance gives the same budget in that unit", () => {
  const uncertainties = fc.array(fc.tuple(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 100 })), {
    minLength: 1,
    maxLength: 8,
  });
  fc.assert(
    fc.property(uncertainties, fc.integer({ min: -200, max: 200 }), (pairs, power) => {
      const lines = pairs.map(([value, freedom]) => (freedom > 50 ? rectangular(value) : normal(value, freedom)));
      const budget = combineBudget(lines);
      const reversed = combineBudget(lines.toReversed());
      const scaled = combineBudget(
        lines.map((line) => ({ ...line, standardUncertainty: line.standardUncertainty * 2 ** power })),
      );
      for (const other of [reversed, scaled]) {
        expect(other.coverageBasis).toBe(budget.coverageBasis);
        near(other.coverageFactor, budget.coverageFactor, 1e-12);
      }
      near(reversed.expandedUncertainty, budget.expandedUncertainty, 1e-12);
      near(scaled.expandedUncertainty, budget.expandedUncertainty * 2 ** power, 1e-12);
      near(
        budget.lines.reduce((total, { share }) => total + share, 0),
        1,
        1e-13,
      );
    }),
  );
});

test("an empty budget, one of zeros, and lines that are none are refused", () => {
  expect(() => combineBudget([])).toThrow(RangeError);
  expect(() => combineBudget([normal(0), rectangular(0)])).toThrow("no contribution is above zero");
  for (const standardUncertainty of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => combineBudget([{ ...normal(1), standardUncertainty }])).toThrow(RangeError);
  for (const degreesOfFreedom of [0, Number.NaN])
    expect(() => combineBudget([{ ...normal(1), degreesOfFreedom }])).toThrow(RangeError);
});
