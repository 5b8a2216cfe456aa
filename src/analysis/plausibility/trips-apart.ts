import type { TripDirection } from "../../model/calibration-words.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";

/** A trip far from the others of its output, and where they lie; distance. */
export type ApartTrip = { index: number; expected: number };

export type TripContext = { setPoint: number; span: number; step: number };

const partsOfSpan = { amongMany: 0.005, ofTwo: 0.02, alone: 0.05 } as const;
const beyondSpread = 5;
const beyondSteps = 3;

/**
 * The trips of one output in one phase that lie far from their fellows of the same direction.
 *
 * Of two trips that do not agree the one farther from the set point is called apart; a single trip is held against the
 * set point and the trips of the other direction.
 *
 * @param trips of one output and phase, distances in one unit
 * @param context set point, span of the range and smallest step, in that unit
 * @returns the trips apart, in order: farther from the median of the others than five times their spread, three steps and
 *   0.5 % of span
 * Source: own choice.
 * @example tripsApart([20, 20.1, 2.01].map((reference) => ({ direction: "approach", reference })),
 *   { setPoint: 20, span: 80, step: 0.01 }) // [{ index: 2, expected: 20.05 }]
 */
export function tripsApart(
  trips: readonly { direction: TripDirection; reference: number }[],
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
    const isFarther = Math.abs(reference - setPoint) > Math.abs(expected - setPoint);
    const witnesses = same.length >= 2 ? [] : [setPoint, ...(across.length > 0 ? [median(across)] : [])];
    const isFarFromAll = witnesses.every((one) => Math.abs(reference - one) > partsOfSpan.ofTwo * span);
    return same.length >= 2 || (isFarFromAll && (same.length === 0 || isFarther)) ? [{ index, expected }] : [];
  });
}

function distancesOf(trips: readonly { direction: TripDirection; reference: number }[], wanted: TripDirection) {
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
