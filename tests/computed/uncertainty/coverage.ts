import { cyclesOf } from "../../../src/model/scatter-source.ts";
import { randomFrom } from "../loops/random.ts";
import type { Design } from "./designs.ts";
import { meanOf, meanShare, type Share, shareOf } from "./shares.ts";
import { type Simulated, simulatePhase } from "./simulate-phase.ts";

/** How often what a record states holds, over many records of one design. */
export type Coverage = {
  design: Design;
  records: number;
  /** U about the mean error of each direction, over all test points. */
  points: Pick<Share, "share" | "low" | "high">;
  /** The same at the test point where it holds least; part of 1. */
  worstPoint: number;
  /** The same of one test point of each record, outwards, a different one each time: independent of each other. */
  onePoint: Share;
  zero: Share;
  /** Of the records of several cycles that are not shown to differ. */
  zeroWhereAgreeing: Share | null;
  span: Share;
  /** Mean U, millimetres. */
  meanExpandedUncertainty: number;
  /** Records whose budgets say that the cycles differ; that a point's own scatter counts; whose line is not straight. */
  cyclesDiffer: Share;
  ownScatter: Share;
  notStraight: Share | null;
};

/** Millimetres in a percent of span. */
const distancePerPercent = 20;
const [lower, upper] = [200, 2200];

/** So many records of one design, each from its own seed. */
export function coverageOf(design: Design, records: number, firstSeed: number): Coverage {
  const simulated = Array.from({ length: records }, (_, index) => simulatePhase(design, randomFrom(firstSeed + index)));
  const places = Array.from({ length: design.points }, (_, place) => place);
  const held = simulated.map((one) => places.map((place) => heldAt(one, place)));
  const agreeing = design.cycles === 1 ? [] : simulated.filter((one) => !doCyclesDiffer(one));
  const lines = simulated.flatMap(({ phase }) => (phase.uncertainLine === null ? [] : [phase.uncertainLine]));
  return {
    design,
    records,
    points: meanShare(held.map((ofRecord) => part(ofRecord.flat()))),
    worstPoint: Math.min(...places.map((place) => part(held.flatMap((ofRecord) => ofRecord[place] ?? [])))),
    onePoint: shareOf(
      held.map((ofRecord, index) => ofRecord[index % design.points]?.[0] === true),
      Boolean,
    ),
    zero: shareOf(simulated, (one) => isLineErrorHeld(one, "zeroError")),
    zeroWhereAgreeing: agreeing.length === 0 ? null : shareOf(agreeing, (one) => isLineErrorHeld(one, "zeroError")),
    span: shareOf(simulated, (one) => isLineErrorHeld(one, "spanError")),
    meanExpandedUncertainty: meanOf(
      simulated.flatMap(({ phase }) => phase.points.map((point) => point.expandedUncertainty)),
    ),
    cyclesDiffer: shareOf(simulated, doCyclesDiffer),
    ownScatter: shareOf(simulated, hasOwnScatter),
    notStraight: lines.length === 0 ? null : shareOf(lines, ({ isStraight }) => !isStraight),
  };
}

type Of = Pick<Simulated, "phase">;

/** Whether a budget takes what the cycles are shown to differ by. */
export function doCyclesDiffer(of: Of): boolean {
  return sourcesOf(of).some((source) => cyclesOf(source) === "measured");
}

/** Whether a budget takes the scatter of its own test point. */
export function hasOwnScatter(of: Of): boolean {
  return sourcesOf(of).some((source) => /^(?:repeatability|scatter about the line) at this point/u.test(source));
}

function sourcesOf({ phase }: Of): readonly string[] {
  return phase.points.flatMap(({ budget }) => budget.lines.map(({ source }) => source));
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
