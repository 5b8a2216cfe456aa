import { lineBetween } from "./line-between.ts";

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

/**
 * Gives the straight line whose greatest absolute deviation from the points is the least there is.
 *
 * That is the line that keeps farthest between each point and itself: see `lineBetween`. It is exact, without iteration
 * or tolerance.
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
  const { greatestExcess, ...line } = lineBetween(abscissas, ordinates, ordinates);
  return { ...line, greatestDeviation: greatestExcess };
}
