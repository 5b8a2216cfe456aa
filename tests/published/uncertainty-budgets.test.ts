import { describe, expect, test } from "vitest";
import {
  type Contribution,
  combineBudget,
  contribution,
  type Distribution,
} from "../../src/analysis/uncertainty/budget.ts";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { studentTQuantile } from "../../src/numeric/student-t-quantile.ts";
import { correctDigits, readColumns, readExpected } from "./read-data.ts";

const near = (value: number, expected: number, tolerance: number) =>
  expect(Math.abs(value - expected), `${value} for ${expected}`).toBeLessThan(tolerance);

describe("GUM H.1, end gauge", () => {
  type Line = {
    readonly source: string;
    readonly standardUncertainty?: number;
    readonly halfWidth?: number;
    readonly sensitivity?: number;
    readonly degreesOfFreedom: number;
    readonly published: number;
  };
  const published = readExpected<{ contributions: readonly Line[] } & Record<string, number>>("gum-h1-end-gauge");
  const lines = published.contributions.map(({ source, degreesOfFreedom, ...line }) =>
    line.halfWidth === undefined
      ? contribution({
          source,
          value: line.standardUncertainty!,
          unit: "nm",
          distribution: "normal",
          divisor: 1,
          degreesOfFreedom,
        })
      : contribution({
          source,
          value: line.halfWidth,
          unit: "1",
          distribution: "rectangular",
          sensitivity: line.sensitivity!,
          degreesOfFreedom,
        }),
  );
  const budget = combineBudget(lines);

  test("contributions as published (to five digits for the two that are computed)", () => {
    for (const [index, line] of lines.entries())
      expect(
        Math.abs(line.standardUncertainty / published.contributions[index]!.published - 1),
        line.source,
      ).toBeLessThan(2e-5);
  });

  test("combined uncertainty 32 nm, unrounded 31.66 nm", () => {
    near(budget.combinedUncertainty, published.combinedUncertainty!, 0.5);
    near(budget.combinedUncertainty, published.combinedUncertaintyUnrounded!, 0.5e-2);
  });

  test("effective degrees of freedom 16.7, truncated to 16 (from the rounded 32 nm they would be 17.5)", () => {
    // 16.75 from unrounded contributions; the document's, rounded to 0.1 nm, give 16.7.
    near(budget.effectiveDegreesOfFreedom, published.effectiveDegreesOfFreedom!, 0.1);
    expect(Math.floor(budget.effectiveDegreesOfFreedom)).toBe(published.truncatedDegreesOfFreedom);
    // The budget's own k is that of 16 degrees of freedom too, at 95.45 %.
    expect(budget.coverageFactor).toBe(studentTQuantile(0.97725, published.truncatedDegreesOfFreedom!));
  });

  test("at 99 % k = 2.92 and U = 93 nm (2.92 times the rounded 32)", () => {
    const factor = studentTQuantile(0.995, Math.floor(budget.effectiveDegreesOfFreedom));
    near(factor, published.coverageFactor99!, 0.5e-2);
    near(factor * published.combinedUncertainty!, published.expandedUncertainty99!, 0.5);
    near(factor * budget.combinedUncertainty, published.expandedUncertainty99!, 1);
  });
});

test("GUM H.3 with a common uncertainty: u and effective degrees of freedom of the intercept, 12 digits", () => {
  const published = readExpected<Record<string, number>>("gum-h3-common-uncertainty");
  const { t_k_degC: t = [], b_k_degC: b = [] } = readColumns("gum-h3-thermometer");
  const fit = fitLine(
    t.map((temperature) => temperature - 20),
    b,
  );
  expect(correctDigits(fit.interceptStdError!, published.interceptStandardUncertainty!)).toBeGreaterThan(11);
  const line = { unit: "°C", distribution: "normal", divisor: 1 } as const;
  const budget = combineBudget([
    contribution({ source: "line", value: fit.interceptStdError!, degreesOfFreedom: t.length - 2, ...line }),
    contribution({ source: "common", value: published.commonStandardUncertainty!, ...line }),
  ]);
  expect(correctDigits(budget.combinedUncertainty, published.combinedUncertainty!)).toBeGreaterThan(12);
  expect(correctDigits(budget.effectiveDegreesOfFreedom, published.effectiveDegreesOfFreedom!)).toBeGreaterThan(11);
});

describe("EA-4/02", () => {
  type Example = {
    readonly unit: string;
    readonly lines: readonly [value: number, sensitivity: number, degreesOfFreedom: number | null, shape: string][];
    readonly combined: number;
    readonly combinedStep: number;
    readonly documentFactor: number;
    readonly factor: number;
    readonly factorTolerance: number;
    readonly expanded: number;
    readonly expandedOwn: number;
    readonly expandedStep: number;
    readonly truncatedDegreesOfFreedom?: number;
    readonly basis: string;
  };
  // The special shape of S4 stands in as triangular: it takes no part in the choice of k there.
  const shapes: Readonly<Record<string, Distribution>> = { N: "normal", R: "rectangular", X: "triangular" };
  const lineOf = ([value, sensitivity, freedom, shape]: Example["lines"][number]): Contribution =>
    contribution({
      source: shape,
      value,
      unit: "1",
      distribution: shapes[shape]!,
      divisor: 1,
      sensitivity,
      degreesOfFreedom: freedom ?? Number.POSITIVE_INFINITY,
    });

  const examples = Object.entries(readExpected<Record<string, Example>>("ea-4-02"));

  test("six examples were read", () => expect(examples.map(([name]) => name)).toHaveLength(6));

  test.each(examples)("%s: combined uncertainty, k and its basis, and expanded uncertainty", (_, example) => {
    const budget = combineBudget(example.lines.map(lineOf));
    const rounded = (value: number) => Math.round(value / example.expandedStep) * example.expandedStep;
    near(budget.combinedUncertainty, example.combined, 0.51 * example.combinedStep);
    expect(budget.coverageBasis).toBe(example.basis);
    near(budget.coverageFactor, example.factor, example.factorTolerance);
    near(rounded(example.documentFactor * budget.combinedUncertainty), example.expanded, 1e-9);
    near(rounded(budget.expandedUncertainty), example.expandedOwn, 1e-9);
    if (example.truncatedDegreesOfFreedom !== undefined)
      expect(Math.floor(budget.effectiveDegreesOfFreedom)).toBe(example.truncatedDegreesOfFreedom);
  });
});
