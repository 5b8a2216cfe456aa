import { cyclesSource } from "../../../src/model/scatter-source.ts";
import { randomFrom } from "../loops/random.ts";
import type { Design } from "./designs.ts";
import { type Simulated, simulatePhase } from "./simulate-phase.ts";

/** How often what a record states holds, over many records of one design; parts of 1. */
export type Coverage = {
  design: Design;
  records: number;
  /** U about the mean error of each direction, over all test points. */
  points: number;
  /** The same at the test point where it holds least. */
  worstPoint: number;
  zero: number;
  span: number;
  /** Mean U, millimetres. */
  meanExpandedUncertainty: number;
  /** Records whose budgets say that the cycles differ; that a point's own scatter counts; whose line is not straight. */
  cyclesDiffer: number;
  ownScatter: number;
  notStraight: number | null;
};

/** Millimetres in a percent of span. */
const distancePerPercent = 20;
const [lower, upper] = [200, 2200];

/** So many records of one design, each from its own seed. */
export function coverageOf(design: Design, records: number, firstSeed: number): Coverage {
  const simulated = Array.from({ length: records }, (_, index) => simulatePhase(design, randomFrom(firstSeed + index)));
  const byPoint = Array.from({ length: design.points }, (_, place) => simulated.flatMap((one) => heldAt(one, place)));
  const lines = simulated.flatMap(({ phase }) => (phase.uncertainLine === null ? [] : [phase.uncertainLine]));
  const says = (...words: readonly string[]) =>
    part(
      simulated.map(({ phase }) =>
        phase.points.some(({ budget }) =>
          budget.lines.some(({ source }) => words.some((one) => source.startsWith(one))),
        ),
      ),
    );
  return {
    design,
    records,
    points: part(byPoint.flat()),
    worstPoint: Math.min(...byPoint.map(part)),
    zero: part(simulated.map((one) => isLineErrorHeld(one, "zeroError"))),
    span: part(simulated.map((one) => isLineErrorHeld(one, "spanError"))),
    meanExpandedUncertainty: mean(
      simulated.flatMap(({ phase }) => phase.points.map((point) => point.expandedUncertainty)),
    ),
    cyclesDiffer: says(cyclesSource(design.cycles)),
    ownScatter: says("repeatability at this point", "scatter about the line at this point"),
    notStraight: lines.length === 0 ? null : part(lines.map(({ isStraight }) => !isStraight)),
  };
}

/** Both directions: their U is the same, for they are read as often. */
function heldAt({ phase, trueError }: Simulated, place: number): readonly boolean[] {
  const point = phase.points[place];
  if (point === undefined) throw new Error(`no test point ${place}`);
  return [point.up, point.down].flatMap((error) =>
    error === null
      ? []
      : [Math.abs(error * distancePerPercent - trueError(point.reference)) <= point.expandedUncertainty],
  );
}

function isLineErrorHeld({ phase, trueError }: Simulated, which: "zeroError" | "spanError"): boolean {
  const found = phase[which];
  const truth = which === "zeroError" ? trueError(lower) : trueError(upper) - trueError(lower);
  const uncertainty = found?.combinedStandardUncertainty;
  if (!found || uncertainty === null || uncertainty === undefined) throw new Error(`no ${which}`);
  return Math.abs(found.percentSpan - truth / distancePerPercent) <= 2 * uncertainty;
}

function part(held: readonly boolean[]): number {
  return held.filter(Boolean).length / held.length;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
