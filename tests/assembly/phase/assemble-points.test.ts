import { describe, expect, test } from "vitest";
import { combineBudget, contribution } from "../../../src/analysis/uncertainty/budget.ts";
import { assemblePoints, budgetRecord } from "../../../src/assembly/phase/assemble-points.ts";
import { digestOf } from "../../../src/record/file-digest.ts";
import { judgedPointSchema } from "../../../src/record/uncertainty-schema.ts";
import type { JudgedPoint } from "../../../src/verdict/decision/judge-points.ts";
import { frozen } from "../../charts/frozen.ts";

const normal = { unit: "mm", distribution: "normal", divisor: 1 } as const;
const point: JudgedPoint = frozen({
  curvePoint: { point: 50, reference: 50.1, up: 0.4, down: 0.2, mean: 0.3 },
  direction: "rising",
  errorDistance: 0.4,
  errorPercentSpan: 0.4,
  tolerance: { low: -1, high: 2 },
  budget: combineBudget([
    contribution({ source: "GB-1: certificate", value: 0.2, ...normal, divisor: 2 }),
    contribution({ source: "repeatability, mean of 3", value: 0.1, ...normal, degreesOfFreedom: 4 }),
  ]),
  missing: ["GB-1: no drift is stated"],
  sharing: { all: 0.1, cycle: 0, reading: 0.17 },
  decision: { statement: "pass", acceptance: { low: -0.7, high: 1.7 }, guardBand: 0.3 },
  specificRisk: 1e-9,
  testUncertaintyRatio: 4.9,
});

test("no points give none", () => {
  expect(assemblePoints([], undefined, 0)).toEqual([]);
});

test("a point is carried over name by name, and is one by the schema, also through JSON", () => {
  const [record] = assemblePoints([point], undefined, 0);
  const { budget: _, ...rest } = record!;
  expect(rest).toEqual({
    ...{ point: 50, reference: 50.1, up: 0.4, down: 0.2, mean: 0.3 },
    ...{ direction: "rising", errorDistance: 0.4, errorPercentSpan: 0.4, toleranceLow: -1, toleranceHigh: 2 },
    expandedUncertainty: point.budget.expandedUncertainty,
    coverageFactor: point.budget.coverageFactor,
    ...{ guardBand: 0.3, acceptanceLow: -0.7, acceptanceHigh: 1.7 },
    ...{ specificRisk: 1e-9, testUncertaintyRatio: 4.9, statement: "pass" },
  });
  expect(record?.budget.missing).toEqual(["GB-1: no drift is stated"]);
  expect(judgedPointSchema.parse(record)).toEqual(record);
  expect(JSON.parse(JSON.stringify(record))).toEqual(record);
});

test("where no error can pass the acceptance limits are null", () => {
  const decision = { statement: "cannot be decided", acceptance: null, guardBand: 2 } as const;
  expect(assemblePoints([{ ...point, decision }], undefined, 0)[0]).toMatchObject({
    acceptanceLow: null,
    acceptanceHigh: null,
    statement: "cannot be decided",
  });
});

test("unlimited degrees of freedom are null, limited ones a number", () => {
  const { lines, effectiveDegreesOfFreedom } = budgetRecord(point.budget);
  expect(lines.map(({ degreesOfFreedom }) => degreesOfFreedom)).toEqual([null, 4]);
  // u⁴/(0.1⁴/4) with u² = 0.02: 16, to a few roundings.
  expect(Math.abs(effectiveDegreesOfFreedom! - 16)).toBeLessThan(1e-13);
  const unlimited = combineBudget([contribution({ source: "GB-1", value: 1, ...normal })]);
  expect(budgetRecord(unlimited).effectiveDegreesOfFreedom).toBeNull();
});

describe("budgets checked by drawing", () => {
  const draws = 250_000;
  const seedOf = (text: string) => digestOf(new TextEncoder().encode(text));
  const drawn = (seed: Uint8Array, curveNumber = 0, count = 1) =>
    assemblePoints(Array(count).fill(point), { draws, seed }, curveNumber).map(({ monteCarlo }) => monteCarlo);

  test("carry what was drawn, and the reason where it differs", () => {
    const [found] = drawn(seedOf("tables"));
    expect(found).toMatchObject({ draws, agrees: false });
    expect(found?.reason).toMatch(/effective degrees of freedom only approximate/u);
    // Scatter of 4 degrees of freedom is drawn wider than its standard uncertainty, by √2 of it: √(0.01 + 0.02).
    expect(Math.abs(found!.standardUncertainty - Math.sqrt(0.03))).toBeLessThan(0.005);
    expect(judgedPointSchema.shape.monteCarlo.parse(found)).toEqual(found);
  });

  test("are the same for the same tables and others for other tables, another point and another curve", () => {
    const [first] = drawn(seedOf("tables"));
    expect(drawn(seedOf("tables"))[0]).toEqual(first);
    const others = [drawn(seedOf("other tables"))[0], drawn(seedOf("tables"), 0, 2)[1], drawn(seedOf("tables"), 1)[0]];
    const halfWidths = [first, ...others].map((found) => found?.halfWidth);
    expect(new Set(halfWidths).size).toBe(4);
  });

  test("are absent where nobody asked", () => {
    expect(assemblePoints([point], undefined, 0)[0]).not.toHaveProperty("monteCarlo");
  });
});
