import { describe, expect, test } from "vitest";
import { combineBudget, contribution } from "../../../src/analysis/uncertainty/budget.ts";
import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { judgeSetPoint, type SetPointToJudge } from "../../../src/verdict/switching/judge-set-point.ts";
import { frozen } from "../../charts/frozen.ts";

/** Of unlimited degrees of freedom: k is 2.000002 at 95.45 %. */
const budget = combineBudget([
  contribution({ source: "all of it", value: 0.25, unit: "mm", distribution: "normal", divisor: 1 }),
]);
const set: SetPointToJudge = frozen({
  distances: [99, 102],
  error: 0.5,
  setPoint: 100,
  tolerance: 1,
  budget,
  rule: { name: "simple acceptance", guardFactor: 0 },
});
const by = (name: DecisionRule["name"], guardFactor = 1) => ({ ...set, rule: { name, guardFactor } });

test("simple acceptance judges each trip: 102 lies outside 99 to 101, though the mean lies inside", () => {
  expect(judgeSetPoint(set).statement).toBe("fail");
  expect(judgeSetPoint({ ...set, distances: [99, 101], error: 0 }).statement).toBe("pass");
});

describe("the other rules judge the mean with its U of 0.5", () => {
  test.each([
    [0.4999, "pass"],
    [0.5001, "fail"],
    [-0.4999, "pass"],
    [-0.51, "fail"],
  ])("a guard band of U makes of %f mm a %s", (error, statement) => {
    // k at 95.45 % is 2.000002, so that U is 0.5000006.
    expect(judgeSetPoint({ ...by("guard band"), error }).statement).toBe(statement);
  });

  test.each([
    [0.4, "pass"],
    [0.8, "conditional pass"],
    [1.2, "conditional fail"],
    [1.6, "fail"],
  ])("four words make of %f mm a %s", (error, statement) => {
    expect(judgeSetPoint({ ...by("non-binary guard band"), error }).statement).toBe(statement);
  });

  test("where U leaves no zone nothing is decided", () => {
    expect(judgeSetPoint({ ...by("guard band", 1), tolerance: 0.4, error: 0.1 })).toMatchObject({
      statement: "cannot be decided",
      acceptance: null,
    });
  });
});

test("limits, risk and ratio stand beside the statement", () => {
  const judged = judgeSetPoint({ ...set, error: 1 });
  expect([judged.toleranceLow, judged.toleranceHigh]).toEqual([-1, 1]);
  // On the limit half of the distribution lies outside; the other tail begins 8 standard uncertainties away.
  expect(Math.abs(judged.specificRisk - 0.5)).toBeLessThan(1e-14);
  expect(Math.abs(judged.testUncertaintyRatio - 1 / budget.expandedUncertainty)).toBeLessThan(1e-14);
});
