import { describe, expect, test } from "vitest";
import { type CurveReading, errorCurve } from "../../../src/analysis/figures/error-curve.ts";
import type { ToleranceTerm } from "../../../src/analysis/readings/tolerance.ts";
import type { BudgetBasis } from "../../../src/analysis/uncertainty/point-budget.ts";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { isWorse, type JudgedPoint, judgePoints } from "../../../src/verdict/decision/judge-points.ts";
import { managedGuardBand } from "../../../src/verdict/decision/managed-guard-band.ts";
import { basis as ofAnyLoop } from "../../analysis/sample-basis.ts";
import { curveReading, expectNear, signalLoop } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";

/** A few roundings of numbers up to 100. */
const rounding = 1e-14;
const root3 = Math.sqrt(3);
const guardBand: DecisionRule = Object.freeze({ name: "guard band", guardFactor: 1 });
const ruleNamed = (name: DecisionRule["name"]): DecisionRule => ({ name, guardFactor: 1 });

/** One dominant rectangular contribution: u = 0.1 mm, k = 0.95·√3, so U is 0.1645 mm at every point. */
const basis: BudgetBasis = frozen({
  ...ofAnyLoop,
  distancePerOutput: 6.25,
  steps: { reference: 0.2 * root3, output: 0 },
  repeatability: { notDetermined: "one cycle only" },
});
const expandedUncertainty = 0.1 * 0.95 * root3;

type Changes = { rule?: DecisionRule; basis?: Partial<BudgetBasis>; tolerance?: ToleranceTerm };

/** On 0 to 100 mm, where percent of span is mm, ±1 mm. */
function judged(readings: readonly CurveReading[], { rule = guardBand, basis: change, tolerance }: Changes = {}) {
  const loop = { ...signalLoop, ...(tolerance && { toleranceTerms: [tolerance] }) };
  return judgePoints({ curve: errorCurve(readings), readings, basis: { ...basis, ...change }, loop, rule });
}

test("an error of 0.5 mm inside ±1 mm, read once without standards, passes with a guard band of U", () => {
  const [point] = judgePoints({
    curve: [{ point: 50, reference: 50, up: 0.5, down: null, mean: 0.5 }],
    readings: [{ point: 50, reference: 50, error: 0.5, direction: "rising", cycle: 1 }],
    basis: {
      standards: [],
      performedOn: "2026-03-04",
      distanceUnit: "mm",
      signalUnit: "mA",
      principle: "laser",
      isTemperatureCompensated: false,
      airTemperatureCelsius: 20,
      alignmentAngleDegrees: 0,
      judged: "signal",
      distancePerOutput: 6.25,
      steps: { reference: 0.1, output: 0.001 },
      repeatability: { notDetermined: "one cycle only" },
      hysteresis: { width: 0 },
    },
    loop: {
      characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
      toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
      faultLevels: {},
      signalUnit: "mA",
    },
    rule: { name: "guard band", guardFactor: 1 },
  });
  expect(point?.decision.statement).toBe("pass");
});

describe("each direction is judged on its own, and the worse stands for the point", () => {
  test("a hysteresis that the mean would hide fails", () => {
    const [point] = judged([curveReading(50, 1.5), curveReading(50, -1.5, "falling")]);
    expect(point?.curvePoint.mean).toBe(0);
    expect(point?.decision.statement).toBe("fail");
  });

  test.each([
    [0.95, 0.2, "rising"],
    [0.2, 0.95, "falling"],
    [0.2, -0.3, "falling"],
    [0.3, 0.3, "rising"],
  ] as const)("rising %d, falling %d: %s", (up, down, direction) => {
    const [point] = judged([curveReading(50, up), curveReading(50, down, "falling")]);
    expect(point?.direction).toBe(direction);
    expectNear(point?.errorDistance, direction === "rising" ? up : down, rounding);
    expectNear(point?.errorPercentSpan, direction === "rising" ? up : down, rounding);
  });

  test("the number of readings is that of the direction", () => {
    const readings = [1, 2, 3, 4].map((cycle) => curveReading(50, 0.9, "rising", cycle));
    const [point] = judged([...readings, curveReading(50, 0, "falling")], {
      basis: { repeatability: { pooledStdDev: 0.1, degreesOfFreedom: 3 } },
    });
    expect(point?.budget.lines.map(({ source }) => source)).toContain("repeatability, mean of 4");
  });

  test("where one direction was read, half of the hysteresis is in the budget", () => {
    const [one, both] = judged([curveReading(0, 0), curveReading(50, 0), curveReading(50, 0, "falling")]);
    expect(one?.budget.lines.map(({ source }) => source)).toContain("hysteresis, one direction read");
    expect(both?.budget.lines).toHaveLength(1);
  });
});

test("what is said of a point follows from its budget: guard band, acceptance limits, ratio and risk", () => {
  const [point] = judged([curveReading(50, 0.9), curveReading(50, 0.9, "falling")]);
  expectNear(point?.budget.combinedUncertainty, 0.1, rounding);
  expectNear(point?.budget.expandedUncertainty, expandedUncertainty, rounding);
  expectNear(point?.decision.guardBand, expandedUncertainty, rounding);
  expectNear(point?.decision.acceptance?.high, 1 - expandedUncertainty, rounding);
  expectNear(point?.testUncertaintyRatio, 1 / expandedUncertainty, 1e-13);
  // 1 − Φ(1) is 0.158655253931457, of normal tables to 15 digits; of two directions that share nothing 1 − Φ(1)².
  expectNear(point?.specificRisk, 1 - (1 - 0.158655253931457) ** 2, 1e-14);
  expect(point?.decision.statement).toBe("fail");
  expect(point?.missing).toContain("repeatability: one cycle only");
});

describe("the rule decides what is said of the same error (±1 mm, U = 0.165 mm)", () => {
  const places = [0.5, 0.9, 1.1, 1.5];
  test.each([
    ["simple acceptance", ["pass", "pass", "fail", "fail"]],
    ["guard band", ["pass", "fail", "fail", "fail"]],
    ["non-binary guard band", ["pass", "conditional pass", "conditional fail", "fail"]],
    // k is 1.65, of a rectangle: a guard band of U takes its place.
    ["managed guard band", ["pass", "fail", "fail", "fail"]],
  ] as const)("%s", (name, statements) => {
    for (const sign of [1, -1]) {
      const readings = places.flatMap((error, index) => [
        curveReading(25 * index, sign * error),
        curveReading(25 * index, sign * error, "falling"),
      ]);
      const found = judged(readings, { rule: ruleNamed(name) });
      expect(found.map(({ decision }) => decision.statement)).toEqual(statements);
    }
  });

  test("the managed guard band is that of the point's own ratio; at 5 it is none", () => {
    const tight = { basis: "distance", plus: 0.3, minus: 0.3 } as const;
    const rule = ruleNamed("managed guard band");
    const readings = [curveReading(50, 0), curveReading(50, 0, "falling")];
    const known = { repeatability: { pooledStdDev: 0.1, degreesOfFreedom: 1e6 }, steps: { reference: 0, output: 0 } };
    const [point] = judged(readings, { rule, tolerance: tight, basis: known });
    const expanded = point!.budget.expandedUncertainty;
    expectNear(expanded, 0.2, 1e-4);
    expectNear(point!.decision.guardBand, managedGuardBand(expanded, 0.3 / expanded), rounding);
    expect(point!.decision.guardBand).toBeGreaterThan(0);
    expect(judged(readings, { rule, basis: known })[0]?.decision.guardBand).toBe(0);
  });

  test("a tolerance that the uncertainty fills cannot be decided, and never fails for the standard's sake", () => {
    const small = { basis: "distance", plus: 0.1, minus: 0.1 } as const;
    for (const name of ["guard band", "non-binary guard band"] as const) {
      const [point] = judged([curveReading(50, 0.12)], { rule: ruleNamed(name), tolerance: small });
      expect(point?.decision).toMatchObject({ statement: "cannot be decided", acceptance: null });
    }
  });
});

test("percent of reading leaves no tolerance at 0: nothing throws, and only an exact reading could pass", () => {
  const tolerance = { basis: "percent of reading", plus: 1, minus: 1 } as const;
  for (const name of decisionRules) {
    for (const error of [0, 0.05, -0.05]) {
      const [point] = judged([curveReading(0, error), curveReading(0, error, "falling")], {
        rule: ruleNamed(name),
        tolerance,
      });
      expect(point?.testUncertaintyRatio).toBe(0);
      expectNear(point?.specificRisk, 1, 1e-15);
      expect(point!.specificRisk).toBeLessThanOrEqual(1);
      if (name === "simple acceptance") expect(point?.decision.statement).toBe(error === 0 ? "pass" : "fail");
      else expect(point?.decision.statement).toBe("cannot be decided");
    }
  }
});

test("points come by rising distance, and no curve gives none", () => {
  expect(judged([curveReading(80, 0), curveReading(20, 0)]).map(({ curvePoint }) => curvePoint.point)).toEqual([
    20, 80,
  ]);
  for (const name of decisionRules)
    expect(judgePoints({ curve: [], readings: [], basis, loop: signalLoop, rule: ruleNamed(name) })).toEqual([]);
});

describe("worse", () => {
  const point = (statement: JudgedPoint["decision"]["statement"], risk: number) => ({
    decision: { statement, acceptance: null, guardBand: 0 },
    specificRisk: risk,
    errorDistance: 0,
    tolerance: { low: -1, high: 1 },
  });

  test("is a fail than a pass, whatever their risks", () => {
    expect(
      isWorse(
        { ...point("fail", 0.9), decision: { statement: "fail", acceptance: null, guardBand: 1 } },
        { ...point("pass", 0.1), decision: { statement: "pass", acceptance: { low: -1, high: 1 }, guardBand: 0 } },
      ),
    ).toBe(true);
    expect(isWorse(point("pass", 0.9), point("fail", 0.1))).toBe(false);
  });

  test("is the error farther beyond its limit where both are sure to lie outside, on either side", () => {
    const sure = (errorDistance: number) => ({
      decision: { statement: "fail" as const, acceptance: null, guardBand: 1 },
      specificRisk: 1,
      errorDistance,
      tolerance: { low: -1, high: 1 },
    });
    expect(isWorse(sure(9), sure(-5))).toBe(true);
    expect(isWorse(sure(-5), sure(9))).toBe(false);
    expect(isWorse(sure(-9), sure(5))).toBe(true);
  });

  test("is the greater risk where the statements are the same, and neither of equals", () => {
    expect(isWorse(point("pass", 0.2), point("pass", 0.1))).toBe(true);
    expect(isWorse(point("pass", 0.1), point("pass", 0.2))).toBe(false);
    expect(isWorse(point("pass", 0.1), point("pass", 0.1))).toBe(false);
  });
});
