import type { Instrument } from "../model/instrument.ts";
import { globalFalseAccept } from "../verdict/global-false-accept.ts";
import type { CalibrationRecord, PhaseRecord } from "./record-schema.ts";

/**
 * The risks over all loops of this kind, where the owner states how many of them are in tolerance.
 *
 * Taken at the test point with the least test uncertainty ratio, with the guard band that was used there.
 *
 * @param instrument in_tolerance_rate, percent of loops that are truly in tolerance
 * @param phase the last one that was measured
 * @returns false accept and false reject as parts of all loops; undefined where no rate is stated
 * Source: JCGM 106:2012, 9.5.2; ANSI/NCSL Z540.3-2006, 5.3.
 * @example falseAcceptOf({ …, inToleranceRate: 95 }, phase).falseAccept
 */
export function falseAcceptOf(
  { inToleranceRate }: Instrument,
  phase: PhaseRecord | undefined,
): CalibrationRecord["falseAccept"] {
  const [point] = (phase?.points ?? []).toSorted((a, b) => a.testUncertaintyRatio - b.testUncertaintyRatio);
  if (inToleranceRate === undefined || point === undefined) return undefined;
  const { testUncertaintyRatio, guardBand, toleranceLow, toleranceHigh } = point;
  const guardMultiplier = Math.max(0, 1 - (2 * guardBand) / (toleranceHigh - toleranceLow));
  const population = { testUncertaintyRatio, inToleranceProbability: inToleranceRate / 100, guardMultiplier };
  return { inToleranceRate, testUncertaintyRatio, guardMultiplier, ...globalFalseAccept(population) };
}
