import { gapShare } from "../../model/test-points.ts";
/** A judged test point, as much of it as a history needs; distance. */
export type PlacePoint = {
  point: number;
  errorDistance: number;
  expandedUncertainty: number;
  toleranceLow: number;
  toleranceHigh: number;
};

/**
 * The test point at a place of the range, in one phase of one record.
 *
 * @param points of the phase, any order; distance
 * @param place distance
 * @param span of the range, distance
 * @returns the nearest one within 2 % of span; undefined where nothing was measured there
 * Source: own choice; 2 % of span as the test points of one phase.
 * @example pointAt([{ point: 599 }], 600, 1800) // { point: 599 }
 */
export function pointAt<Point extends { point: number }>(
  points: readonly Point[],
  place: number,
  span: number,
): Point | undefined {
  const off = ({ point }: Point) => Math.abs(point - place);
  const [nearest] = points.toSorted((one, other) => off(one) - off(other));
  return nearest !== undefined && off(nearest) <= gapShare * span ? nearest : undefined;
}

/**
 * How much of the tolerance an error takes up.
 *
 * @param error distance
 * @param low lower limit of the error, distance, normally below zero
 * @param high upper limit
 * @returns 0 at no error, 1 on the limit of its side; Infinity where that side allows nothing
 * Source: own choice.
 * @example partOfTolerance(-1, -2, 5) // 0.5
 */
export function partOfTolerance(error: number, low: number, high: number): number {
  if (error === 0) return 0;
  const limit = error < 0 ? low : high;
  return limit === 0 ? Number.POSITIVE_INFINITY : Math.max(0, error / limit);
}

/**
 * Whether anything is allowed to an error at a test point.
 *
 * @param point with its limits, distance
 * @returns false where both limits are the same: a tolerance in percent of reading, at a distance of 0
 * Source: own choice.
 * @example hasTolerance({ toleranceLow: 0, toleranceHigh: 0 }) // false
 */
export function hasTolerance({
  toleranceLow,
  toleranceHigh,
}: Pick<PlacePoint, "toleranceLow" | "toleranceHigh">): boolean {
  return toleranceHigh > toleranceLow;
}

/**
 * The test point whose error takes up the most of its tolerance.
 *
 * @param points of a phase, any order; one without a tolerance is passed over
 * @returns the point and its part of the tolerance, as in `partOfTolerance`; the first of equals; undefined where none has
 *   a tolerance
 * Source: own choice.
 * @example worstPoint([{ point: 0, errorDistance: 1, expandedUncertainty: 0.2, toleranceLow: -5, toleranceHigh: 5 },
 *   { point: 9, errorDistance: -4, expandedUncertainty: 0.2, toleranceLow: -5, toleranceHigh: 5 }])?.part // 0.8
 */
export function worstPoint<Point extends Omit<PlacePoint, "expandedUncertainty">>(
  points: readonly Point[],
): { point: Point; part: number } | undefined {
  const [worst] = points
    .filter(hasTolerance)
    .map((point) => ({ point, part: partOfTolerance(point.errorDistance, point.toleranceLow, point.toleranceHigh) }))
    .toSorted((one, other) => other.part - one.part);
  return worst;
}
