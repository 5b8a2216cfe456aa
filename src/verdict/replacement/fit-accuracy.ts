import { type Figure, isDetermined, notDetermined } from "../../analysis/figures/figure.ts";
import { loopOf } from "../../analysis/readings/loop.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import type { Candidate, Instrument } from "../../model/instrument.ts";
import type { DistanceUnit } from "../../model/instrument-words.ts";
import { convert } from "../../units/convert.ts";
import { isInside } from "../../units/is-inside.ts";
import { mostWords, numberWords, outsideWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/** Accuracy and tolerance at the end of the range where they are closest; distances in the instrument's unit. */
export type AccuracyFit = {
  reference: number;
  accuracy: number;
  tolerance: number;
  /** Tolerance over accuracy. */
  ratio: number;
  /** Expanded uncertainty of the standards; null where it is not known. */
  standardsUncertainty: number | null;
  /** Accuracy and that uncertainty as a root of squares; null where that is not known. */
  together: number | null;
};

/**
 * Whether a candidate is accurate enough for the tolerance, and whether the standards of this calibration could show it.
 *
 * The stated accuracy is taken as a limit. It fits where √(accuracy² + U²) stays inside the tolerance at both ends of the
 * range, U of the standards alone. Where the accuracy by itself does, a better standard is the change that it needs.
 *
 * @param candidate accuracy with its basis
 * @param needs tolerance and range of the loop, U of the standards
 * @returns one cell, and the figures behind it where they are known
 * Source: own choice of the rule: the sensor's error and the standard's have nothing to do with each other, so they add up
 *   as independent ones do (JCGM 100:2008, 5.1.2), though both are stated as limits of about 95 %.
 * @example fitAccuracy({ candidate: "A", accuracy: 18, accuracyBasis: "distance", distanceUnit: "mm" }, { ...needs,
 *   standardsUncertainty: 24 }).figures // { reference: 400, accuracy: 18, tolerance: 36, ratio: 2,
 *   standardsUncertainty: 24, together: 30 }
 */
export function fitAccuracy(
  candidate: Candidate,
  { instrument, standardsUncertainty }: Pick<LoopNeeds, "instrument" | "standardsUncertainty">,
): { cell: FitCell; figures: AccuracyFit | null } {
  const found = closest(candidate, instrument, standardsUncertainty);
  const needs = toleranceWords(instrument);
  if (!isDetermined(found)) {
    const cell = { demand: "accuracy", needs, offers: notStated, reason: found.notDetermined };
    return { cell: { ...cell, result: "cannot be told" }, figures: null };
  }
  const unit = instrument.distanceUnit;
  const offers = `±${numberWords(found.accuracy, unit)} at ${numberWords(found.reference, unit)}`;
  return { cell: { demand: "accuracy", needs, offers, ...told(found, standardsUncertainty, unit) }, figures: found };
}

function closest(candidate: Candidate, instrument: Instrument, uncertainty: Figure<number>): Figure<AccuracyFit> {
  const { rangeLower, rangeUpper, distanceUnit } = instrument;
  const standardsUncertainty = isDetermined(uncertainty) ? uncertainty : null;
  const found: AccuracyFit[] = [];
  for (const reference of [rangeLower, rangeUpper]) {
    const accuracy = accuracyAt(candidate, reference, distanceUnit);
    if (!isDetermined(accuracy)) return accuracy;
    const tolerance = toleranceOf(instrument, reference);
    // A part of the reading at zero distance: nothing to compare there.
    if (accuracy === 0) continue;
    const together = standardsUncertainty === null ? null : Math.hypot(accuracy, standardsUncertainty);
    found.push({ reference, accuracy, tolerance, ratio: tolerance / accuracy, standardsUncertainty, together });
  }
  const [least] = found.toSorted((one, other) => strain(other) - strain(one));
  if (least === undefined) throw new RangeError("fitAccuracy: a range has two ends, and one of them is not zero");
  return least;
}

/** Part of the tolerance that is taken up. */
function strain({ tolerance, accuracy, together }: AccuracyFit): number {
  return (together ?? accuracy) / tolerance;
}

function told(
  { accuracy, tolerance, ratio, together }: AccuracyFit,
  uncertainty: Figure<number>,
  unit: string,
): Pick<FitCell, "result" | "reason"> {
  const limits = { low: null, high: tolerance };
  if (!isInside(accuracy, limits)) {
    return { result: "does not fit", reason: `its own error: ${outsideWords(accuracy, limits, unit, "")}` };
  }
  const goes = `it goes ${numberWords(ratio, null, 3)} times into the tolerance`;
  if (!isDetermined(uncertainty) || together === null) {
    const why = isDetermined(uncertainty) ? "" : uncertainty.notDetermined;
    return { result: "cannot be told", reason: `${goes}, but U of the standards is not known: ${why}` };
  }
  const withStandards = `with U = ${numberWords(uncertainty, unit, 2)} of the standards`;
  if (isInside(together, limits)) {
    return { result: "fits", reason: `${goes}; ${withStandards} together ±${numberWords(together, unit, 3)}` };
  }
  const outside = `${goes}; ${withStandards} ${outsideWords(together, limits, unit, "")}`;
  const isUsedUp = isInside(tolerance, { low: null, high: accuracy });
  const best = Math.sqrt(tolerance ** 2 - accuracy ** 2);
  if (isUsedUp) return { result: "cannot be told", reason: `${outside}, and no standard could show it` };
  const reason = `${outside}: prove it with standards of U up to ${mostWords(best, unit, 2)}`;
  return { result: "fits with a change", reason };
}

/** The lesser side of the tolerance at a distance. */
function toleranceOf(instrument: Instrument, reference: number): number {
  const { toleranceTerms, characteristics } = loopOf(instrument);
  const { low, high } = toleranceAt(toleranceTerms, characteristics.signal, reference);
  return Math.min(-low, high);
}

function toleranceWords(instrument: Instrument): string {
  const { rangeLower, rangeUpper, distanceUnit: unit } = instrument;
  const [near, far] = [rangeLower, rangeUpper].map((end) => `±${numberWords(toleranceOf(instrument, end), unit)}`);
  if (near === far) return `${near}`;
  return `${near} at ${numberWords(rangeLower, unit)}, ${far} at ${numberWords(rangeUpper, unit)}`;
}

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
