import { describe, expect, test } from "vitest";
import { analysePhase } from "../../../src/analysis/figures/analyse-phase.ts";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import type { Reading, Standard } from "../../../src/model/calibration.ts";
import { decisionRules } from "../../../src/model/instrument-words.ts";
import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { decidingPoints, type JudgedPhase, judgePhase, worstOf } from "../../../src/verdict/decision/judge-phase.ts";
import { emptyAnalysis } from "../../analysis/sample-analysis.ts";
import { meter, rail } from "../../analysis/sample-basis.ts";
import { expectNear, loop, reading } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";

const guardBand: DecisionRule = Object.freeze({ name: "guard band", guardFactor: 1 });
const rows = (standards: readonly Standard[] = []) =>
  frozen({
    instrument: {
      tag: "LT-1",
      rangeLower: 0,
      rangeUpper: 100,
      distanceUnit: "mm",
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: 1,
      toleranceBasis: "distance",
    },
    calibration: { calibration: "C-1", tag: "LT-1", performedOn: "2026-03-04", alignmentAngle: 0 },
    standards,
    steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.01 },
  } as const);

function judged(readings: readonly Reading[], standards: readonly Standard[] = [], rule = guardBand, of: Loop = loop) {
  const analysis = analysePhase(readings, of);
  if (!isDetermined(analysis)) throw new Error(analysis.notDetermined);
  return withPoints(judgePhase(analysis, rows(standards), of, rule));
}

/** The points of the first stage, and those of the last where that is another one. */
function withPoints({ basis, stages }: JudgedPhase) {
  const [points = [], ...later] = [...stages.values()];
  return { basis, stages, points, endPoints: later.at(-1) };
}

const sources = (points: ReturnType<typeof judged>["points"] | undefined) =>
  points?.[0]?.budget.lines.map(({ source }) => source);

test("a phase without a curve has no points, and none of the controller", () => {
  const { points, endPoints } = withPoints(
    judgePhase(
      emptyAnalysis,
      {
        instrument: {
          tag: "LT-1",
          rangeLower: 0,
          rangeUpper: 100,
          distanceUnit: "mm",
          signalLower: 4,
          signalUpper: 20,
          signalUnit: "mA",
          tolerance: 1,
          toleranceBasis: "distance",
        },
        calibration: { calibration: "C-1", tag: "LT-1" },
        standards: [],
        steps: { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 },
      },
      {
        characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
        toleranceTerms: [{ basis: "distance", plus: 1, minus: 1 }],
        faultLevels: {},
        signalUnit: "mA",
      },
      { name: "guard band", guardFactor: 1 },
    ),
  );
  expect(points).toEqual([]);
  expect(endPoints).toBeUndefined();
});

test("all readings left out: no points under any rule, and nothing throws", () => {
  const rejected = [0, 50, 100].map((reference) => reading(reference, { signal: 4, value: 0, rejected: "slipped" }));
  for (const name of decisionRules)
    expect(judged(rejected, [], { name, guardFactor: 1 })).toMatchObject({ points: [] });
});

describe("the controller", () => {
  const readings = [0, 50, 100].map((reference) =>
    reading(reference, { signal: 4 + 0.16 * reference, counts: 276 * reference, value: 0.1 * reference + 0.2 }),
  );

  test("is judged on its own, to half a step of what it displayed, without the signal meter", () => {
    const { points, endPoints } = judged(readings, [rail, meter]);
    expect(points.map(({ decision }) => decision.statement)).toEqual(["pass", "pass", "pass"]);
    expect(endPoints?.map(({ decision }) => decision.statement)).toEqual(["fail", "fail", "fail"]);
    expect(sources(points)).toContain("MM-1: certificate");
    expect(sources(endPoints)).toEqual([
      "GB-1: certificate",
      "GB-1: drift since the certificate",
      "GB-1: resolution",
      "resolution of the displayed value",
    ]);
  });

  test("has no points of its own where nothing was shown, or where its value is the judged quantity", () => {
    expect(judged([reading(50, { signal: 12 })]).endPoints).toBeUndefined();
    const byValue = judged([reading(50, { value: 5 })]);
    expect(byValue.endPoints).toBeUndefined();
    expect(byValue.basis.judged).toBe("value");
    expect(sources(byValue.points)).toContain("resolution of the displayed value");
  });
});

test("counts are judged with half a count", () => {
  const { basis, points } = judged([reading(50, { counts: 13824 })]);
  expect(basis).toMatchObject({ judged: "counts", steps: { reference: 0.1, output: 1 } });
  expect(sources(points)).toContain("resolution of the counts");
  expectNear(points[0]?.budget.lines[1]?.standardUncertainty, 50 / 27648 / Math.sqrt(3), 1e-18);
});

test("a sensor that stands still fails: its slope does not blow up the uncertainty", () => {
  const still = [0, 50, 100].flatMap((reference) =>
    [1, 2].map((cycle) => reading(reference, { cycle, signal: 12 + 0.002 * cycle + 1e-5 * reference })),
  );
  const { points } = judged(still, [rail, meter]);
  expect(points.map(({ decision }) => decision.statement)).toEqual(["fail", "pass", "fail"]);
});

test("a reverse-acting loop has the budgets and statements of its mirror image", () => {
  const reverse: Loop = frozen({
    ...loop,
    characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 20, outputAtUpper: 4 } },
  });
  const signals = [4.05, 12.1, 19.85];
  const readings = (of: (signal: number) => number) =>
    signals.map((signal, index) => reading(50 * index, { signal: of(signal) }));
  const one = judged(
    readings((signal) => signal),
    [rail, meter],
  );
  const other = judged(
    readings((signal) => 24 - signal),
    [rail, meter],
    guardBand,
    reverse,
  );
  for (const [index, point] of one.points.entries()) {
    expect(other.points[index]?.decision.statement).toBe(point.decision.statement);
    // 24 − s rounds at 4e-15 mA, 2e-14 mm of 6.25 mm/mA; nothing of it enters the budget.
    expect(Math.abs(other.points[index]!.errorDistance - point.errorDistance)).toBeLessThan(1e-13);
    // The scatter about the line is of these errors, so it is as near.
    expectNear(other.points[index]?.budget.combinedUncertainty, point.budget.combinedUncertainty, 1e-13);
  }
});

describe("the points by which a loop is decided", () => {
  const phase = judged([
    reading(0, { signal: 4, counts: 0 }),
    reading(50, { signal: 12 }),
    reading(100, { signal: 20, counts: 20000 }),
  ]);

  test("are those of the last stage that was read at each, by rising distance", () => {
    expect(decidingPoints(phase).map(({ stage, curvePoint }) => [stage, curvePoint.point])).toEqual([
      ["counts", 0],
      ["signal", 50],
      ["counts", 100],
    ]);
    expect(decidingPoints({ stages: new Map() })).toEqual([]);
  });

  test("the worst of them is found by its place", () => {
    expect(worstOf(decidingPoints(phase))).toBe(2);
    expect(worstOf([])).toBeUndefined();
  });
});
