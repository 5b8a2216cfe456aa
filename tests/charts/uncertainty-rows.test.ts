import { expect, test } from "vitest";
import { acceptanceRows, hasAcceptanceLimits, hasNoZone, uncertaintyRows } from "../../src/charts/uncertainty-rows.ts";
import type { JudgedPointRecord, PhaseRecord } from "../../src/record/record-schema.ts";
import { frozen } from "./frozen.ts";
import { type SampleOptions, sampleRecord } from "./sample-record.ts";

function samplePhase(options: SampleOptions = {}): PhaseRecord {
  const phase = sampleRecord(options).phases.asFound;
  if (phase === undefined) throw new Error("the sample has a phase as found");
  return phase;
}

/** Powers of two, so that every comparison is exact. */
function pointsWith(changes: readonly Partial<JudgedPointRecord>[]): readonly JudgedPointRecord[] {
  const [point] = samplePhase().points;
  if (point === undefined) throw new Error("the sample has a point");
  return frozen(changes.map((change, index) => ({ ...point, reference: 8 * (index + 1), ...change })));
}

const inside = { guardBand: 1, acceptanceLow: -2, acceptanceHigh: 4 };
const noZone = { guardBand: 1, acceptanceLow: null, acceptanceHigh: null };
const asTolerance = { guardBand: 0, acceptanceLow: -3, acceptanceHigh: 5 };
/** The lines that are drawn, each as its places. */
function linesOf(points: readonly JudgedPointRecord[]): readonly (readonly unknown[])[] {
  const rows = acceptanceRows("asFound", points, 0.5, 1);
  const names = [...new Set(rows.map(({ line }) => line))];
  return names.map((name) => rows.filter(({ line }) => line === name).map(({ x, y }) => [x, y]));
}

test("a bar reaches from error minus U to error plus U, times the factor", () => {
  const points = pointsWith([{ errorDistance: 3, expandedUncertainty: 1 }]);
  expect(uncertaintyRows("asLeft", points, 0.5)).toEqual([{ x: 8, low: 1, high: 2, series: "asLeft" }]);
});

test("acceptance limits run through neighbouring points, and lines part where no error can pass", () => {
  expect(linesOf(pointsWith([inside, inside, noZone, inside, inside]))).toEqual([
    [
      [8, -1],
      [16, -1],
    ],
    [
      [8, 2],
      [16, 2],
    ],
    [
      [32, -1],
      [40, -1],
    ],
    [
      [32, 2],
      [40, 2],
    ],
  ]);
});

test("a limit of one point only is drawn to both sides of it", () => {
  expect(linesOf(pointsWith([noZone, inside, asTolerance]))).toEqual([
    [
      [15, -1],
      [17, -1],
    ],
    [
      [15, 2],
      [17, 2],
    ],
  ]);
});

test("nothing is drawn where the acceptance limits are those of the tolerance, or where there are none", () => {
  expect(acceptanceRows("asFound", samplePhase().points, 1, 1)).toEqual([]);
  expect(acceptanceRows("asFound", pointsWith([asTolerance, noZone]), 1, 1)).toEqual([]);
});

test("a phase says whether it has limits of its own, and whether U leaves none somewhere", () => {
  const words = (options: SampleOptions) => [hasAcceptanceLimits, hasNoZone].map((has) => has(samplePhase(options)));
  expect(words({})).toEqual([false, false]);
  expect(words({ decisionRule: "non-binary guard band" })).toEqual([true, false]);
  expect(words({ decisionRule: "guard band", standardPercent: 0.6 })).toEqual([false, true]);
});
