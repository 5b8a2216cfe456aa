import { type Axis, axes } from "../../model/loop-stages.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import type { StagedReading } from "../stages/staged-readings.ts";
import type { Scale } from "./scales.ts";

/** A unit in which all numbers of a column fit the rest of the loop. */
export type UnitOfAll = {
  scale: Scale;
  /** Median distance from what the other columns say, percent of span: as the instrument names the unit, and in this one. */
  before: number;
  after: number;
};

/** Below it the numbers may be wrong, but not by a unit. */
const leastBefore = 10;
const mostAfter = 5;
const leastGain = 5;
/** As much of the span the numbers have to cover in the other unit, and so many readings there must be. */
const leastCover = 20;
const fewest = 3;

/**
 * The unit in which the numbers of one column, as a whole, fit what the other columns say, where they do not fit in the
 * unit that the instrument names.
 *
 * @param readings of one phase
 * @param axis the column
 * @param scales other units of that column
 * @returns the best of them; undefined where the unit named fits, or none of the others does
 * Source: own choice: more than 10 % of span off as named, at most 5 % and a fifth of it in the other unit, over a fifth of
 *   the span at least.
 * @example unitOfAll(stagedInInches, "reference", referenceScales(loop, "mm"))?.scale.unit // "in"
 */
export function unitOfAll(
  readings: readonly StagedReading[],
  axis: Axis,
  scales: readonly Scale[],
): UnitOfAll | undefined {
  const pairs = readings.flatMap(({ reading, percent }) => {
    const written = reading[axis];
    const own = percent[axis];
    if (written === undefined || own === undefined) return [];
    const others = axes.flatMap((other) => (other === axis ? [] : (percent[other] ?? [])));
    return others.length === 0 ? [] : [{ written, own, others: others.length === 1 ? others[0]! : median(others) }];
  });
  if (pairs.length < fewest) return undefined;
  const before = median(pairs.map(({ own, others }) => Math.abs(own - others)));
  if (before <= leastBefore) return undefined;
  const fits = scales.flatMap((scale): UnitOfAll[] => {
    const shown = pairs.map(({ written }) => scale.percentOf(written));
    const after = median(pairs.map(({ others }, place) => Math.abs((shown[place] as number) - others)));
    const isCovered = greatestOf(shown) - leastOf(shown) >= leastCover;
    return isCovered && after <= mostAfter && after * leastGain < before ? [{ scale, before, after }] : [];
  });
  return fits.toSorted((one, other) => one.after - other.after)[0];
}

/** A scale that nobody knows here: far outside the ends of the signal, and following the distance all the same. */
const outsidePart = 0.8;
const outsideBy = 10;
const surelyFollows = 0.99;

/**
 * Whether the references as a whole are none of this range.
 *
 * @param readings of one phase
 * @returns true where four of five lie more than 10 % of span outside the range, or all of them outside and within 5 % of
 *   each other while what was read moves by half the span; of three readings at least
 * Source: own choice; a loop is read inside its range.
 * @example areReferencesOutside(stagedCounts) // false
 */
export function areReferencesOutside(readings: readonly StagedReading[]): boolean {
  const given = readings.flatMap(({ percent: { reference } }) => (reference === undefined ? [] : [reference]));
  if (given.length < fewest) return false;
  const outside = given.filter((percent) => percent < -outsideBy || percent > 100 + outsideBy).length;
  const isStill = given.every((percent) => percent < 0 || percent > 100) && coverOf(given) < stillWithin;
  return outside >= outsidePart * given.length || (isStill && readAxes.some((axis) => moves(readings, axis)));
}

const stillWithin = 5;
const movesBy = 50;
const readAxes = ["signal", "signalAtCard", "counts", "value"] as const;

function moves(readings: readonly StagedReading[], axis: Axis): boolean {
  return coverOf(readings.flatMap(({ percent }) => percent[axis] ?? [])) >= movesBy;
}

function coverOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : greatestOf(values) - leastOf(values);
}

/**
 * Whether the numbers of a column as a whole are no signal of the loop, though they follow the distance.
 *
 * @param readings of one phase
 * @param axis the column
 * @returns true where four of five readings lie more than 10 % of span outside the ends and their numbers follow the
 *   reference with a correlation of 0.99 or more
 * Source: own choice; product-moment correlation.
 * @example isUnknownScale(stagedCounts, "signal") // true
 */
export function isUnknownScale(readings: readonly StagedReading[], axis: Axis): boolean {
  const pairs = readings.flatMap(({ percent }) => {
    const [shown, given] = [percent[axis], percent.reference];
    return shown === undefined || given === undefined ? [] : [{ shown, given }];
  });
  const outside = pairs.filter(({ shown }) => shown < -outsideBy || shown > 100 + outsideBy).length;
  if (pairs.length < fewest || outside < outsidePart * pairs.length) return false;
  return Math.abs(correlation(pairs)) >= surelyFollows;
}

function correlation(pairs: readonly { shown: number; given: number }[]): number {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [x, y] = [mean(pairs.map(({ given }) => given)), mean(pairs.map(({ shown }) => shown))];
  let [xx, yy, xy] = [0, 0, 0];
  for (const { shown, given } of pairs) {
    xx += (given - x) ** 2;
    yy += (shown - y) ** 2;
    xy += (given - x) * (shown - y);
  }
  return xx === 0 || yy === 0 ? 0 : xy / Math.sqrt(xx * yy);
}
