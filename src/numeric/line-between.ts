import { greatestOf, leastOf } from "./least-and-greatest.ts";
import { mean } from "./mean.ts";
import { requireFinite, requirePoints } from "./require-finite.ts";

/** The straight line that keeps farthest inside a lower and an upper bound at each point. */
export type LineBetween = {
  readonly slope: number;
  /** The line at abscissa 0; where that is far from the points, reckon from `abscissaMean` and `valueAtMean`. */
  readonly intercept: number;
  /** How far the line leaves the bounds where it does so most; below zero where it stays inside by that much. */
  readonly greatestExcess: number;
  readonly abscissaMean: number;
  readonly valueAtMean: number;
};

type Strip = { readonly slope: number; readonly top: number; readonly bottom: number };

/**
 * Gives the straight line that keeps farthest inside a lower and an upper bound at each point, or leaves them least.
 *
 * For a slope m the best line leaves the bounds by half of max(floor − m·x) − min(ceiling − m·x). That is a convex
 * function of m made of straight pieces, with corners only at the slopes of the edges of the upper hull of the floors
 * and of the lower hull of the ceilings. So its least value stands at one of those slopes: all are tried, and there is
 * no iteration and no tolerance. A line between all bounds exists if and only if the excess is not above zero.
 *
 * @param abscissas array of n >= 2 finite numbers, any order, repeats allowed, not all equal
 * @param floors array of n finite numbers, same order
 * @param ceilings array of n finite numbers, same order; where they are the floors themselves this is the minimax line
 * @returns the line and its greatest excess (unit of the bounds), correct to rounding. Where bounds that share an
 * abscissa set the excess alone, several slopes do equally well and one of them is given
 * Faults: `RangeError` when lengths differ, n < 2, a value is not finite, or all abscissas are equal.
 * Source: own choice of algorithm; that a convex function of straight pieces has its least value at a corner: S. Boyd,
 * L. Vandenberghe, Convex Optimization (2004), 4.3.
 * @example lineBetween([0, 1, 2, 3], [-1, 0, 3, 8], [1, 2, 5, 10]) // slope 3, intercept -1, greatestExcess 0
 */
export function lineBetween(
  abscissas: readonly number[],
  floors: readonly number[],
  ceilings: readonly number[],
): LineBetween {
  requirePoints(abscissas, floors, 2);
  requirePoints(abscissas, ceilings, 2);
  requireFinite("ceilings", ceilings);
  const abscissaMean = mean(abscissas);
  const floorMean = mean(floors);
  const about = (ordinates: readonly number[]) =>
    abscissas.map((abscissa, index) => ({
      abscissa: abscissa - abscissaMean,
      ordinate: ordinates[index]! - floorMean,
    }));
  const narrowest = narrowestStrip(about(floors), about(ceilings));
  const valueAtMean = floorMean + (narrowest.top + narrowest.bottom) / 2;
  return {
    slope: narrowest.slope,
    intercept: valueAtMean - narrowest.slope * abscissaMean,
    greatestExcess: height(narrowest) / 2,
    abscissaMean,
    valueAtMean,
  };
}

function narrowestStrip(floors: readonly PlanePoint[], ceilings: readonly PlanePoint[]): Strip {
  const below = upperHull(floors);
  const above = upperHull(ceilings.map(upsideDown)).map(upsideDown);
  const slopes = [...edgeSlopes(below), ...edgeSlopes(above)];
  if (slopes.length === 0) throw new RangeError("all abscissas are equal, so no line is determined");
  const strips = slopes.map((slope) => stripAround(slope, below, above));
  return strips.reduce((best, strip) => (height(strip) < height(best) ? strip : best));
}

function upsideDown(point: PlanePoint): PlanePoint {
  return { abscissa: point.abscissa, ordinate: -point.ordinate };
}

function edgeSlopes(hull: readonly PlanePoint[]): readonly number[] {
  return hull.slice(1).map((right, index) => {
    const left = hull[index]!;
    return (right.ordinate - left.ordinate) / (right.abscissa - left.abscissa);
  });
}

function stripAround(slope: number, below: readonly PlanePoint[], above: readonly PlanePoint[]): Strip {
  const offset = (point: PlanePoint) => point.ordinate - slope * point.abscissa;
  return { slope, top: greatestOf(below.map(offset)), bottom: leastOf(above.map(offset)) };
}

function height(strip: Strip): number {
  return strip.top - strip.bottom;
}

/** A point of the plane. */
export type PlanePoint = { readonly abscissa: number; readonly ordinate: number };

/**
 * Gives the upper convex hull of some points: the corners of a string stretched over them from left to right.
 *
 * @param points array of n >= 0 points with finite coordinates, any order; of several at one abscissa only the highest
 * counts
 * @returns the corners from left to right, abscissas strictly rising and slopes strictly falling; every point lies on
 * or under the string. The coordinates are those given, none is computed
 * Faults: none.
 * Source: A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions", Inf. Process. Lett. 9, 216
 * (1979).
 * @example upperHull([0, 2, 1, 0].map((ordinate, abscissa) => ({ abscissa, ordinate }))).map(({ abscissa }) =>
 *   abscissa) // [0, 1, 3]
 */
export function upperHull(points: readonly PlanePoint[]): readonly PlanePoint[] {
  const hull: PlanePoint[] = [];
  for (const point of highestPerAbscissa(points)) {
    while (hull.length >= 2 && !turnsDown(hull.at(-2)!, hull.at(-1)!, point)) hull.pop();
    hull.push(point);
  }
  return hull;
}

function highestPerAbscissa(points: readonly PlanePoint[]): readonly PlanePoint[] {
  const fromLeft = [...points].sort((a, b) => a.abscissa - b.abscissa || b.ordinate - a.ordinate);
  return fromLeft.filter((point, index) => index === 0 || point.abscissa > fromLeft[index - 1]!.abscissa);
}

function turnsDown(first: PlanePoint, middle: PlanePoint, last: PlanePoint): boolean {
  const firstRise = (middle.ordinate - first.ordinate) * (last.abscissa - first.abscissa);
  const wholeRise = (last.ordinate - first.ordinate) * (middle.abscissa - first.abscissa);
  return firstRise > wholeRise;
}
