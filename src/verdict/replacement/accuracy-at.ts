import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { Candidate, DistanceUnit } from "../../model/instrument.ts";
import { convert } from "../../units/convert.ts";

/**
 * The greatest error that a candidate's data allow it at a distance.
 *
 * A part of span, or of the signal, is that of the candidate's own whole range: teaching it to a part of the range makes
 * its stated error no smaller.
 *
 * @param candidate accuracy with its basis; its range and signal where the basis needs them
 * @param reference x, distance
 * @param unit of the reference and of what is returned
 * @returns distance, 0 or more; or what is not stated
 * Source: `tolerance.ts`; own choice that the whole range counts.
 * @example accuracyAt({ candidate: "A", rangeLower: 0.3, rangeUpper: 6.3, distanceUnit: "m", accuracy: 0.25,
 *   accuracyBasis: "percent of span" }, 4000, "mm") // 15
 */
export function accuracyAt(candidate: Candidate, reference: number, unit: DistanceUnit): Figure<number> {
  const { accuracy, accuracyBasis: basis, distanceUnit } = candidate;
  if (accuracy === undefined || basis === undefined) return notDetermined("accuracy is not stated with its basis");
  if (basis === "percent of reading") return toleranceAt([term(basis, accuracy)], noRange, reference).high;
  if (distanceUnit === undefined) return notDetermined("distance_unit is not stated, and the accuracy rests on it");
  const inUnit = (distance: number) => convert(distance, distanceUnit, unit);
  if (basis === "distance") return inUnit(accuracy);
  const { rangeLower, rangeUpper, signalLower = 0, signalUpper = 0 } = candidate;
  if (rangeLower === undefined || rangeUpper === undefined) {
    return notDetermined("the range is not stated, and the accuracy is a part of it");
  }
  if (basis === "signal" && signalLower === signalUpper) {
    return notDetermined("the signal is not stated, and the accuracy is a part of it");
  }
  const own = { rangeLower: inUnit(rangeLower), rangeUpper: inUnit(rangeUpper) };
  const characteristic = { ...own, outputAtLower: signalLower, outputAtUpper: signalUpper };
  return toleranceAt([term(basis, accuracy)], characteristic, reference).high;
}

/** What a part of the reading does not ask for. */
const noRange = { rangeLower: 0, rangeUpper: 1, outputAtLower: 0, outputAtUpper: 1 };

function term(basis: NonNullable<Candidate["accuracyBasis"]>, size: number) {
  return { basis, plus: size, minus: size };
}
