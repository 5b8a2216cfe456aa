import type { Candidate } from "../../model/instrument.ts";
import type { DistanceUnit } from "../../model/instrument-words.ts";
import { convert } from "../../units/convert.ts";
import { isInside } from "../../units/is-inside.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { type FitCell, notStated } from "./fit-cell.ts";
import type { LoopNeeds } from "./loop-needs.ts";

/**
 * Whether a candidate reaches both ends of the loop's range; its blind zone counts as a part of what it does not reach.
 *
 * @param candidate with its own unit of distance
 * @param needs of the loop
 * @returns a cell for the near end, one for the far end
 * Source: own choice: a range that reaches as far or farther fits, on the end is inside.
 * @example fitRange({ candidate: "A", rangeLower: 0.2, rangeUpper: 6, distanceUnit: "m", blindZone: 0.3 }, needs)[0].offers
 *   // "300 mm, its blind zone", for a loop of 400 to 4000 mm
 */
export function fitRange(candidate: Candidate, { instrument }: Pick<LoopNeeds, "instrument">): readonly FitCell[] {
  return [nearEnd(candidate, instrument), farEnd(candidate, instrument)];
}

type LoopRange = LoopNeeds["instrument"];

function nearEnd(candidate: Candidate, { rangeLower, distanceUnit }: LoopRange): FitCell {
  const lower = inUnit(candidate.rangeLower, candidate, distanceUnit);
  const blind = inUnit(candidate.blindZone, candidate, distanceUnit);
  const isBlindZone = blind !== undefined && blind > (lower ?? Number.NEGATIVE_INFINITY);
  const nearest = isBlindZone ? blind : lower;
  const question = { demand: "range, near end", needs: numberWords(rangeLower, distanceUnit) };
  if (nearest === undefined) {
    const reason = "neither range_lower nor blind_zone is stated with its unit";
    return { ...question, result: "cannot be told", offers: notStated, reason };
  }
  const offers = `${numberWords(nearest, distanceUnit)}${isBlindZone ? ", its blind zone" : ""}`;
  const limits = { low: null, high: rangeLower };
  if (!isInside(nearest, limits)) {
    const reason = `out of reach: the first ${numberWords(nearest - rangeLower, distanceUnit)} of the range`;
    return { ...question, result: "does not fit", offers, reason };
  }
  if (lower === undefined)
    return { ...question, result: "cannot be told", offers, reason: "range_lower is not stated" };
  return { ...question, result: "fits", offers, reason: "it measures from there on" };
}

function farEnd(candidate: Candidate, { rangeUpper, distanceUnit }: LoopRange): FitCell {
  const farthest = inUnit(candidate.rangeUpper, candidate, distanceUnit);
  const question = { demand: "range, far end", needs: numberWords(rangeUpper, distanceUnit) };
  if (farthest === undefined) {
    const reason = "range_upper is not stated with its unit";
    return { ...question, result: "cannot be told", offers: notStated, reason };
  }
  const offers = numberWords(farthest, distanceUnit);
  const limits = { low: rangeUpper, high: null };
  if (isInside(farthest, limits)) return { ...question, result: "fits", offers, reason: "it measures up to there" };
  const reason = `out of reach: the last ${numberWords(rangeUpper - farthest, distanceUnit)} of the range`;
  return { ...question, result: "does not fit", offers, reason };
}

function inUnit(
  distance: number | undefined,
  { distanceUnit }: Pick<Candidate, "distanceUnit">,
  unit: DistanceUnit,
): number | undefined {
  return distance === undefined || distanceUnit === undefined ? undefined : convert(distance, distanceUnit, unit);
}
