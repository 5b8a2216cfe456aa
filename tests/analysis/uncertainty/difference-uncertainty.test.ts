import { expect, test } from "vitest";
import { combineBudget, contribution } from "../../../src/analysis/uncertainty/budget.ts";
import {
  differenceUncertainty,
  type ResultUncertainty,
} from "../../../src/analysis/uncertainty/difference-uncertainty.ts";

const line = (source: string, value: number, degreesOfFreedom = Number.POSITIVE_INFINITY) =>
  contribution({ source, value, unit: "mm", distribution: "normal", divisor: 1, degreesOfFreedom });

/** A result by GB-1 with a certificate of standard uncertainty `certificate`, and a scatter of its own. */
function result(certificate: number, scatter: number, of = "EX-1", freedom = 8): ResultUncertainty {
  const budget = combineBudget([line("GB-1: certificate", certificate), line("scatter", scatter, freedom)]);
  return {
    expandedUncertainty: budget.expandedUncertainty,
    combinedUncertainty: budget.combinedUncertainty,
    effectiveDegreesOfFreedom: budget.effectiveDegreesOfFreedom,
    certificates: [{ standard: "GB-1", certificate: of, standardUncertainty: certificate }],
  };
}

test("the same certificate drops out, as if both budgets had never had it", () => {
  const { expandedUncertainty, sameStandards } = differenceUncertainty(result(0.4, 0.3), result(0.4, 0.2));
  const without = combineBudget([line("first", 0.3, 8), line("second", 0.2, 8)]);
  expect(Math.abs(expandedUncertainty - without.expandedUncertainty)).toBeLessThan(1e-14);
  expect(sameStandards).toEqual(["GB-1"]);
});

test("what the same certificate contributes more to one of them stays", () => {
  const { expandedUncertainty } = differenceUncertainty(result(0.5, 0.3), result(0.4, 0.2));
  const without = combineBudget([line("difference", 0.1), line("first", 0.3, 8), line("second", 0.2, 8)]);
  expect(Math.abs(expandedUncertainty - without.expandedUncertainty)).toBeLessThan(1e-14);
});

test("another certificate of the same standard is another error, and so is nothing drops out of a mere U", () => {
  const anew = differenceUncertainty(result(0.4, 0.3), result(0.4, 0.2, "EX-2"));
  const all = combineBudget([line("a", 0.4), line("b", 0.4), line("first", 0.3, 8), line("second", 0.2, 8)]);
  expect(Math.abs(anew.expandedUncertainty - all.expandedUncertainty)).toBeLessThan(1e-14);
  expect(anew.sameStandards).toEqual([]);
  expect(
    differenceUncertainty({ expandedUncertainty: 0.3 }, { ...result(0.4, 0.3), expandedUncertainty: 0.4 }),
  ).toEqual({
    expandedUncertainty: 0.5,
    sameStandards: [],
  });
});

test("with unlimited degrees of freedom U is twice u: 0.8486 for two results of 0.5 that share 0.4", () => {
  const one = { ...result(0.4, 0.3, "EX-1", Number.POSITIVE_INFINITY), effectiveDegreesOfFreedom: null };
  const { expandedUncertainty } = differenceUncertainty(one, one);
  // 2.000002 · √2 · 0.3: the quantile at 95.45 % is 2.000002.
  expect(Math.abs(expandedUncertainty - 2.000002 * Math.SQRT2 * 0.3)).toBeLessThan(1e-6);
  expect(expandedUncertainty.toFixed(4)).toBe("0.8485");
});

test("nothing but one certificate leaves nothing", () => {
  const bare = { ...result(0.4, 0.3), combinedUncertainty: 0.4, effectiveDegreesOfFreedom: null };
  expect(differenceUncertainty(bare, bare).expandedUncertainty).toBe(0);
});
