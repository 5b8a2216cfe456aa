import { type TripDirection, tripDirections } from "../../model/calibration-words.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { pooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";

/** A trip far from the others of its output, and where they lie; distance. */
export type ApartTrip = { index: number; expected: number };

/** A trip to be held against its fellows. */
type ApartCandidate = { direction: TripDirection; reference: number; cycle?: number | undefined };

export type TripContext = { setPoint: number; span: number; step: number };

const partsOfSpan = { amongMany: 0.005, ofTwo: 0.02, alone: 0.05 } as const;
const beyondSpread = 5;
const beyondSteps = 3;
/** How often trips that merely scatter may be told: by the scatter of all others, and by that of all but any one of them. */
const falseAlarms = { byAll: 0.01, byAllButOne: 0.001 } as const;

/**
 * The trips of one output in one phase that lie far from their fellows of the same direction.
 *
 * Of two trips that do not agree the one farther from the set point is called apart; a single trip is held against the
 * set point and the trips of the other direction. Of three or more one is apart by Student's t of its distance from the
 * others too, with the scatter of both directions: where trips scatter anyway, no one of them is a slip.
 *
 * @param trips of one output and phase, distances in one unit
 * @param context set point, span of the range and smallest step, in that unit
 * @returns the trips apart, in order: farther from the median of the others than five times their spread, three steps,
 *   0.5 % of span and what their scatter explains
 * Source: own choice; Student's t of one more reading, as in ISO 16269-4, with Bonferroni's share for each trip, from memory.
 * @example tripsApart([20, 20.1, 2.01].map((reference) => ({ direction: "approach", reference })),
 *   { setPoint: 20, span: 80, step: 0.01 }) // [{ index: 2, expected: 20.05 }]
 */
export function tripsApart(
  trips: readonly ApartCandidate[],
  { setPoint, span, step }: TripContext,
): readonly ApartTrip[] {
  return trips.flatMap(({ direction, reference }, index) => {
    const isFellow = (_: unknown, place: number) => place !== index;
    const others = trips.filter(isFellow);
    const same = distancesOf(others, direction);
    const across = distancesOf(others, direction === "approach" ? "recede" : "approach");
    const expected = same.length > 0 ? median(same) : across.length > 0 ? median(across) : setPoint;
    const off = Math.abs(reference - expected);
    if (off <= limitOf(same, { span, step })) return [];
    if (same.length >= 2 && off <= scatterLimit(trips, index, step)) return [];
    const isFarther = Math.abs(reference - setPoint) > Math.abs(expected - setPoint);
    const witnesses = same.length >= 2 ? [] : [setPoint, ...(across.length > 0 ? [median(across)] : [])];
    const isFarFromAll = witnesses.every((one) => Math.abs(reference - one) > partsOfSpan.ofTwo * span);
    return same.length >= 2 || (isFarFromAll && (same.length === 0 || isFarther)) ? [{ index, expected }] : [];
  });
}

/**
 * How far from its fellows a trip may lie by the scatter of the others. One of these may be wild too and hide it: above all
 * the other trip of its cycle, where the two are exchanged.
 */
function scatterLimit(trips: readonly ApartCandidate[], index: number, step: number): number {
  const suspect = trips[index] as ApartCandidate;
  const others = trips.filter((_, place) => place !== index);
  const isPartner = ({ direction, cycle }: ApartCandidate) =>
    cycle !== undefined && cycle === suspect.cycle && direction !== suspect.direction;
  const limitBy = (some: readonly ApartCandidate[], falseAlarm: number) => {
    const same = distancesOf(some, suspect.direction);
    const groups = tripDirections.map((direction) => distancesOf(some, direction)).filter(({ length }) => length > 1);
    if (groups.length === 0 || same.length === 0) return Number.POSITIVE_INFINITY;
    const { standardDeviation, degreesOfFreedom } = pooledStandardDeviation(groups);
    const quantile = studentTQuantile(1 - falseAlarm / 2 / trips.length, degreesOfFreedom);
    return quantile * Math.max(standardDeviation, step / 2) * Math.sqrt(1 + 1 / same.length);
  };
  return Math.min(
    limitBy(others, falseAlarms.byAll),
    limitBy(
      others.filter((one) => !isPartner(one)),
      falseAlarms.byAll,
    ),
    ...others.map((left) =>
      limitBy(
        others.filter((one) => one !== left),
        falseAlarms.byAllButOne,
      ),
    ),
  );
}

function distancesOf(trips: readonly ApartCandidate[], wanted: TripDirection) {
  return trips.filter(({ direction }) => direction === wanted).map(({ reference }) => reference);
}

function limitOf(same: readonly number[], { span, step }: Pick<TripContext, "span" | "step">): number {
  const least = beyondSteps * step;
  if (same.length === 0) return Math.max(least, partsOfSpan.alone * span);
  if (same.length === 1) return Math.max(least, partsOfSpan.ofTwo * span);
  const spread = greatestOf(same) - leastOf(same);
  // Of three trips one wild one makes the spread of the others wide; their middle half does not feel it.
  const calm = same.length >= 4 ? middleHalf(same) * 2 : spread;
  return Math.max(least, beyondSpread * Math.min(spread, calm), partsOfSpan.amongMany * span);
}

function middleHalf(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const quarter = Math.floor(sorted.length / 4);
  return (sorted.at(-1 - quarter) as number) - (sorted[quarter] as number);
}
