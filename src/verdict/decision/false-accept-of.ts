import { hasTolerance } from "../../analysis/readings/place-in-range.ts";
import type { Sharing } from "../../analysis/uncertainty/scatter-contributions.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { Instrument } from "../../model/instrument.ts";
import { chancesOutside, type DeviatingResult } from "../../numeric/chance-outside.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { normalCumulative } from "../../numeric/normal-distribution.ts";
import type { DecisionRule } from "./decision-rule.ts";
import { globalFalseAccept, reach, spreadOf, tabulated } from "./global-false-accept.ts";

/** What of a test point these risks rest on; distance. */
type PointAtRisk = {
  point: number;
  testUncertaintyRatio: number;
  guardBand: number;
  toleranceLow: number;
  toleranceHigh: number;
  budget: { combinedUncertainty: number; sharing?: Sharing | undefined };
};
type ReadingAtRisk = { point: number; direction: string; cycle?: number | undefined; leftOut?: string | undefined };

/** A phase that was judged: the points of the first stage, those behind it that decide, all readings. */
type PhaseAtRisk = {
  points: readonly PointAtRisk[];
  endPoints?: readonly PointAtRisk[] | undefined;
  readings: readonly ReadingAtRisk[];
};

/** As-found results of a filing folder: how many were in tolerance. */
type FiledRate = { inTolerance: number; of: number };

/** The risks over all loops as parts of them, and what they rest on; rates in percent. */
export type RisksOfAllLoops = {
  /** Found in tolerance. */
  inToleranceRate: number;
  /** Truly in tolerance, with what the measurement adds taken out. */
  trueRate: number;
  /** Standard deviation of the true errors, part of the tolerance; 0 where measuring alone explains the found rate. */
  spread: number;
  /** How many results are judged, each of which has to pass. */
  results: number;
  testUncertaintyRatio: number;
  guardMultiplier: number;
  falseAccept: number;
  falseReject: number;
};

/** Fewer results say too little of a rate: own choice. */
const leastFiledResults = 10;

/**
 * The risks over all loops of this kind, where the owner states how many of them are found in tolerance, or where enough
 * filed records show it: for the rule as it is applied, which every reading has to meet, or every mean.
 *
 * True errors are normal about the middle of the tolerance, the same part of it over the whole range. What is found is
 * the true error, what all readings share, what those of a cycle share, and each reading's own; so the spread of the true
 * errors is that with which as many are found in tolerance as were (`spreadOf`). A test point without any tolerance
 * (percent of reading at a distance of 0) is passed over.
 *
 * @param instrument in_tolerance_rate, percent of loops that are found in tolerance by such calibrations
 * @param phase the last one that was measured
 * @param rule decision rule; found in tolerance is a pass, and a conditional pass too
 * @param filedRate as-found results in the filing folder; of less than 10 nothing is made. (k + 1)/(n + 2) of k in
 *   tolerance among n stands for the rate, which is never 0 or 1, whatever was observed
 * @returns false accept and false reject as parts of all loops; undefined where no rate is known, nothing is judged, or no
 *   error can pass
 * Source: JCGM 106:2012, 9.5.2; the rate from counts is Laplace's rule of succession (own choice); that an error is the
 *   same part of the tolerance over the range is own choice, as of a zero error.
 * @example falseAcceptOf({ tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance", inToleranceRate: 95 },
 *   onePointAtRisk, { name: "guard band", guardFactor: 0 }).falseAccept // 0.007705: found, so truly 95.7 %
 */
export function falseAcceptOf(
  instrument: Instrument,
  phase: PhaseAtRisk | undefined,
  rule: DecisionRule,
  filedRate?: FiledRate,
): RisksOfAllLoops | undefined {
  const points = decidingPoints(phase).filter(hasTolerance);
  const inToleranceRate = instrument.inToleranceRate ?? rateOf(filedRate);
  const [least] = points.toSorted((one, other) => one.testUncertaintyRatio - other.testUncertaintyRatio);
  if (inToleranceRate === undefined || phase === undefined || least === undefined) return undefined;
  const results = resultsOf(points, phase.readings, rule);
  if (results.some(({ acceptance, known }) => !known || acceptance <= 0)) return undefined;
  const accepted = judgedBy(results);
  const isFoundByTolerance = rule.name === "non-binary guard band";
  const found = isFoundByTolerance ? judgedBy(results.map((one) => ({ ...one, acceptance: 1 }))) : accepted;
  const spread = spreadOf(found, inToleranceRate / 100);
  return {
    inToleranceRate,
    trueRate: spread === 0 ? 100 : 100 * (1 - 2 * normalCumulative(-1 / spread)),
    spread,
    results: results.reduce((sum, { groups, count }) => sum + groups * count, 0),
    testUncertaintyRatio: least.testUncertaintyRatio,
    guardMultiplier: leastOf(results.map(({ acceptance }) => acceptance)),
    ...globalFalseAccept(accepted, spread),
  };
}

/** Results at one test point, as parts of half its tolerance: where they pass, how they deviate, of how many cycles. */
type ResultsAt = Omit<DeviatingResult, "low" | "high"> & { acceptance: number; groups: number; known: boolean };

function resultsOf(
  points: readonly PointAtRisk[],
  readings: readonly ReadingAtRisk[],
  rule: DecisionRule,
): readonly ResultsAt[] {
  const used = readings.filter(({ leftOut }) => leftOut === undefined);
  const doCyclesDiffer = points.some(({ budget }) => (budget.sharing?.cycle ?? 0) > 0);
  const groups = rule.name === "simple acceptance" && doCyclesDiffer ? cyclesOf(used) : 1;
  const byPoint = groupedBy(used, ({ point }) => point);
  return points.map((one) => ({ ...resultsAt(one, byPoint.get(one.point) ?? [], rule), groups })).map(perGroup);
}

function perGroup(result: ResultsAt): ResultsAt {
  return { ...result, count: result.count / result.groups };
}

function cyclesOf(readings: readonly ReadingAtRisk[]): number {
  return new Set(readings.map(({ cycle = 1 }) => cycle)).size;
}

function resultsAt(
  point: PointAtRisk,
  own: readonly ReadingAtRisk[],
  { name }: DecisionRule,
): Omit<ResultsAt, "groups"> {
  const { budget, guardBand, toleranceLow, toleranceHigh } = point;
  const unit = (toleranceHigh - toleranceLow) / 2;
  const cycles = cyclesOf(own);
  const { all, cycle, reading } = budget.sharing ?? { all: 0, cycle: 0, reading: 0 };
  const judged = { acceptance: 1 - guardBand / unit, known: budget.sharing !== undefined && cycles > 0 };
  if (name === "simple acceptance") {
    return { ...judged, common: all / unit, group: cycle / unit, own: reading / unit, count: own.length };
  }
  const common = Math.hypot(all, cycle / Math.sqrt(cycles));
  const ofMean = Math.sqrt(Math.max(0, budget.combinedUncertainty ** 2 - common ** 2));
  const count = new Set(own.map(({ direction }) => direction)).size;
  return { ...judged, common: common / unit, own: ofMean / unit, count };
}

function judgedBy(results: readonly ResultsAt[]) {
  const noises = results.map(({ common, group = 0, own }) => Math.hypot(common, group, own));
  const groups = results[0]?.groups ?? 1;
  return tabulated({
    acceptance: leastOf(results.map(({ acceptance }) => acceptance)),
    noise: { least: leastOf(noises), greatest: greatestOf(noises) },
    rejectedAt: chancesOutside(
      results.map((one) => ({ ...one, low: -one.acceptance, high: one.acceptance })),
      { groups, sure: reach },
    ),
  });
}

/** At each test point the last stage that was read there. */
function decidingPoints(phase: PhaseAtRisk | undefined): readonly PointAtRisk[] {
  const last = new Map((phase?.points ?? []).map((one) => [one.point, one]));
  for (const one of phase?.endPoints ?? []) last.set(one.point, one);
  return [...last.values()];
}

/** Percent. */
function rateOf(filedRate: FiledRate | undefined): number | undefined {
  if (filedRate === undefined || filedRate.of < leastFiledResults) return undefined;
  return (100 * (filedRate.inTolerance + 1)) / (filedRate.of + 2);
}
