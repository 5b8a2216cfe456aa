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
 * The tolerance at a place, from those of the two test points nearest to it.
 *
 * @param points of a phase, at least one
 * @param place distance, also beyond the test points
 * @returns both limits, distance; exact for every tolerance that is a part of span, of the reading, or a sum of such
 * @throws RangeError without a point
 * Source: own choice; such tolerances change with distance along a straight line (on either side of zero).
 * @example toleranceNear([{ point: 0, toleranceLow: -1, toleranceHigh: 1 }, { point: 10, toleranceLow: -2,
 *   toleranceHigh: 2 }], 20) // { low: -3, high: 3 }
 */
export function toleranceNear(
  points: readonly Pick<PlacePoint, "point" | "toleranceLow" | "toleranceHigh">[],
  place: number,
): { low: number; high: number } {
  const [one, other] = points.toSorted((left, right) => Math.abs(left.point - place) - Math.abs(right.point - place));
  if (one === undefined) throw new RangeError("toleranceNear: requires at least one point");
  if (other === undefined || other.point === one.point) return { low: one.toleranceLow, high: one.toleranceHigh };
  const part = (place - one.point) / (other.point - one.point);
  return {
    low: one.toleranceLow + part * (other.toleranceLow - one.toleranceLow),
    high: one.toleranceHigh + part * (other.toleranceHigh - one.toleranceHigh),
  };
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
