import { mean } from "./mean.ts";
import { requirePoints } from "./require-finite.ts";
import { type PlanePoint, upperHull } from "./upper-hull.ts";

/** The straight line that stays closest to all points at once. */
export type MinimaxLine = {
  readonly slope: number;
  /** The line at abscissa 0; where that is far from the points, reckon from `abscissaMean` and `valueAtMean`. */
  readonly intercept: number;
  /** Greatest absolute ordinate deviation of the points from the line: no straight line has a lesser one. */
  readonly greatestDeviation: number;
  readonly abscissaMean: number;
  readonly valueAtMean: number;
};

type Strip = { readonly slope: number; readonly top: number; readonly bottom: number };

/**
 * Gives the straight line whose greatest absolute deviation from the points is the least there is.
 *
 * The height of the narrowest strip of slope m that holds all points is a convex function of m made of straight pieces,
 * with corners only at the slopes of the edges of the convex hull. So its least value stands at one of those slopes:
 * all are tried, and there is no iteration and no tolerance.
 *
 * @param abscissas array of n >= 2 finite numbers, any order, repeats allowed, not all equal
 * @param ordinates array of n finite numbers, same order
 * @returns the line and its greatest deviation (unit of the ordinates, >= 0), correct to rounding. Where readings that
 * share an abscissa set the deviation alone, several slopes do equally well and one of them is given
 * Faults: `RangeError` when lengths differ, n < 2, a value is not finite, or all abscissas are equal.
 * Source: own choice of algorithm; the optimum touches three points with alternating signs, P. L. Chebyshev's
 * equioscillation theorem (E. W. Cheney, Introduction to Approximation Theory, 1966).
 * @example minimaxLine([0, 1, 2, 3], [0, 1, 4, 9]) // slope 3, intercept -1, greatestDeviation 1
 */
export function minimaxLine(abscissas: readonly number[], ordinates: readonly number[]): MinimaxLine {
  requirePoints(abscissas, ordinates, 2);
  const abscissaMean = mean(abscissas);
  const ordinateMean = mean(ordinates);
  const points = abscissas.map((abscissa, index) => ({
    abscissa: abscissa - abscissaMean,
    ordinate: ordinates[index]! - ordinateMean,
  }));
  const narrowest = narrowestStrip(points);
  const valueAtMean = ordinateMean + (narrowest.top + narrowest.bottom) / 2;
  return {
    slope: narrowest.slope,
    intercept: valueAtMean - narrowest.slope * abscissaMean,
    greatestDeviation: height(narrowest) / 2,
    abscissaMean,
    valueAtMean,
  };
}

function narrowestStrip(points: readonly PlanePoint[]): Strip {
  const roof = upperHull(points);
  const floor = upperHull(points.map(upsideDown)).map(upsideDown);
  const slopes = [...edgeSlopes(roof), ...edgeSlopes(floor)];
  if (slopes.length === 0) throw new RangeError("all abscissas are equal, so no line is determined");
  const strips = slopes.map((slope) => stripAround(slope, roof, floor));
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

function stripAround(slope: number, roof: readonly PlanePoint[], floor: readonly PlanePoint[]): Strip {
  const offset = (point: PlanePoint) => point.ordinate - slope * point.abscissa;
  return { slope, top: Math.max(...roof.map(offset)), bottom: Math.min(...floor.map(offset)) };
}

function height(strip: Strip): number {
  return strip.top - strip.bottom;
}
