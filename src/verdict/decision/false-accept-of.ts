import { hasTolerance } from "../../analysis/readings/place-in-range.ts";
import type { Instrument } from "../../model/instrument.ts";
import { globalFalseAccept } from "./global-false-accept.ts";

/** What of a test point these risks rest on; distance. */
type PointAtRisk = { testUncertaintyRatio: number; guardBand: number; toleranceLow: number; toleranceHigh: number };

/** As-found results of a filing folder: how many were in tolerance. */
type FiledRate = { inTolerance: number; of: number };

/** The risks over all loops as parts of them, and what they rest on; the rate in percent. */
export type RisksOfAllLoops = {
  inToleranceRate: number;
  testUncertaintyRatio: number;
  guardMultiplier: number;
  falseAccept: number;
  falseReject: number;
};

/** Fewer results say too little of a rate: own choice. */
const leastFiledResults = 10;

/**
 * The risks over all loops of this kind, where the owner states how many of them are in tolerance, or where enough
 * filed records show it.
 *
 * Taken at the test point with the least test uncertainty ratio, with the guard band that was used there. A test point
 * without any tolerance (percent of reading at a distance of 0) has no ratio and is passed over.
 *
 * @param instrument in_tolerance_rate, percent of loops that are truly in tolerance
 * @param phase the last one that was measured
 * @param filedRate as-found results in the filing folder; of less than 10 nothing is made. (k + 1)/(n + 2) of k in
 *   tolerance among n stands for the rate, which is never 0 or 1, whatever was observed
 * @returns false accept and false reject as parts of all loops; undefined where no rate is known or nothing is judged
 * Source: JCGM 106:2012, 9.5.2; ANSI/NCSL Z540.3-2006, 5.3; the rate from counts is Laplace's rule of succession (own
 *   choice), and takes what was found in tolerance for what is.
 * @example falseAcceptOf({ tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance", inToleranceRate: 95 }, { points: [
 *   { testUncertaintyRatio: 4, guardBand: 0, toleranceLow: -1, toleranceHigh: 1 }] }).falseAccept // 0.00858266
 */
export function falseAcceptOf(
  instrument: Instrument,
  phase: { points: readonly PointAtRisk[] } | undefined,
  filedRate?: FiledRate,
): RisksOfAllLoops | undefined {
  const [point] = (phase?.points ?? [])
    .filter(hasTolerance)
    .toSorted((one, other) => one.testUncertaintyRatio - other.testUncertaintyRatio);
  const inToleranceRate = instrument.inToleranceRate ?? rateOf(filedRate);
  if (inToleranceRate === undefined || point === undefined) return undefined;
  const { testUncertaintyRatio, guardBand, toleranceLow, toleranceHigh } = point;
  const guardMultiplier = Math.max(0, 1 - (2 * guardBand) / (toleranceHigh - toleranceLow));
  const population = { testUncertaintyRatio, inToleranceProbability: inToleranceRate / 100, guardMultiplier };
  return { inToleranceRate, testUncertaintyRatio, guardMultiplier, ...globalFalseAccept(population) };
}

/** Percent. */
function rateOf(filedRate: FiledRate | undefined): number | undefined {
  if (filedRate === undefined || filedRate.of < leastFiledResults) return undefined;
  return (100 * (filedRate.inTolerance + 1)) / (filedRate.of + 2);
}
