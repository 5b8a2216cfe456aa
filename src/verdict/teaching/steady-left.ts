import { isDetermined } from "../../analysis/figures/figure.ts";
import {
  bestCorrection,
  correctedDistance,
  type RangeEnds,
  shareOfRoom,
} from "../../analysis/figures/two-constant-correction.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { mean } from "../../numeric/mean.ts";
import { parabolaResiduals } from "../../numeric/parabola-residuals.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import type { ReadingError } from "./judged-errors.ts";
import type { Scatter } from "./reading-scatter.ts";

/** Chance that noise alone gives more than the bound, one-sided. */
const noiseChance = 0.01;
/** With fewer test points no end can be left out. */
const fewestPoints = 5;
/** Of a computer's own reckoning. */
const rounding = 1e-9;

type Group = readonly ReadingError[];

/**
 * What the best two constants leave for certain: of the mean errors, whichever single reading is left out, or outermost
 * point that does not lie on one parabola with the others, less what noise explains; over the tolerance.
 *
 * More readings make the greatest of them greater but not their means, so that this stands whatever their number.
 *
 * @param readings errors of one part of the loop, distances in one unit
 * @param scatter of single readings over the tolerance; undefined where nothing was repeated
 * @param range its ends
 * @returns part of the tolerance, 1 for the whole; 0 where the scatter is not known or explains all
 * Source: own choice: leave-one-out, and Student's t at 99 % for the means (JCGM 100:2008, 4.2.3, G.3).
 * @example steadyLeft([], { part: 0.1, degreesOfFreedom: 10 }, { rangeLower: 0, rangeUpper: 100 }) // 0
 */
export function steadyLeft(readings: readonly ReadingError[], scatter: Scatter | undefined, range: RangeEnds): number {
  if (scatter === undefined) return 0;
  const groups = [...groupedBy(readings, ({ point, direction }) => `${point} ${direction}`).values()];
  const whole = leftOf(groups, range);
  const without = bearingPlaces(groups, range).flatMap((place) => {
    const group = groups[place]!;
    return group.map((_, member) => {
      const others = group.filter((__, other) => other !== member);
      return leftOf(others.length === 0 ? groups.toSpliced(place, 1) : groups.with(place, others), range);
    });
  });
  const fewestRepeats = leastOf(groups.map(({ length }) => length));
  const noise =
    (studentTQuantile(1 - noiseChance, scatter.degreesOfFreedom) * scatter.part) /
    Math.sqrt(Math.max(1, fewestRepeats));
  const ends = isOneBend(groups, noise) ? [] : withoutEnds(groups);
  const least = leastOf([whole, ...without, ...ends.map((others) => leftOf(others, range))]);
  return Math.max(0, least - noise);
}

/** Whether the ends lie on the same parabola as all between them, within noise: then no end is alone in what it does. */
function isOneBend(groups: readonly Group[], noise: number): boolean {
  const places = groups.map((group) => mean(group.map(({ reference }) => reference)));
  if (new Set(groups.map(([first]) => first!.point)).size < fewestPoints || new Set(places).size < fewestPoints)
    return false;
  const parts = groups.map((group) =>
    mean(
      group.map(({ reference, indicated, tolerance: { low, high } }) =>
        high > low ? (2 * (indicated - reference)) / (high - low) : 0,
      ),
    ),
  );
  return greatestOf(parabolaResiduals(places, parts).map(Math.abs)) <= noise;
}

/** What happens at the outermost point alone is no bend: a blind zone, an obstruction, an end of the signal. */
function withoutEnds(groups: readonly Group[]): readonly (readonly Group[])[] {
  const points = groups.map(([first]) => first!.point);
  if (new Set(points).size < fewestPoints) return [];
  return [leastOf(points), greatestOf(points)].map((end) => groups.filter(([first]) => first!.point !== end));
}

/** The mean of a group, and what is left of its error after the best two constants. */
type Left = { error: number; low: number; high: number };

/**
 * Where leaving out a reading can make less of what is left: the means on which the best constants rest, and the worst of
 * its tolerance. Without any other mean those constants stay as they are.
 */
function bearingPlaces(groups: readonly Group[], range: RangeEnds): readonly number[] {
  const left = allLeft(groups, range);
  const shares = left.map(({ error, ...limits }) => shareOfRoom(error, limits));
  const parts = left.map(partOf);
  const [farthest, worst] = [greatestOf(shares), greatestOf(parts)];
  return left.flatMap((_, place) =>
    shares[place]! >= farthest - rounding || parts[place]! >= worst * (1 - rounding) ? [place] : [],
  );
}

/** The worst mean error over its tolerance after the best two constants; 0 where any two fit. */
function leftOf(groups: readonly Group[], range: RangeEnds): number {
  const left = allLeft(groups, range);
  return left.length === 0 ? 0 : greatestOf(left.map(partOf));
}

function partOf({ error, low, high }: Left): number {
  const room = error < 0 ? -low : high;
  return room > 0 ? Math.abs(error) / room : 0;
}

/** None where any two constants fit. */
function allLeft(groups: readonly Group[], range: RangeEnds): readonly Left[] {
  const means = groups.map((group) => ({
    reference: mean(group.map(({ reference }) => reference)),
    indicated: mean(group.map(({ indicated }) => indicated)),
    limits: group[0]!.tolerance,
  }));
  const correction = bestCorrection(means, range);
  if (!isDetermined(correction)) return [];
  return means.map(({ reference, indicated, limits }) => ({
    error: correctedDistance(indicated, correction, range) - reference,
    ...limits,
  }));
}
