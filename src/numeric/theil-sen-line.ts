import { median } from "./median.ts";
import { requirePoints } from "./require-finite.ts";

/** A straight line. */
export type Line = { readonly slope: number; readonly intercept: number };

/** More points than this are thinned evenly: the pairs grow with the square of the points. */
const MOST_POINTS = 300;

/**
 * Draws a line that a few wild points do not move: its slope is the median of the slopes of all pairs.
 *
 * Up to 29 % of the points may lie anywhere. The intercept is the median of ordinate − slope · abscissa.
 *
 * @param abscissas array of n >= 2 finite numbers, not all equal, any order; pairs of equal abscissa give no slope
 * @param ordinates array of n finite numbers, same order
 * @returns slope and intercept; of more than 300 points every k-th is taken, so that at most 300 count
 * Faults: `RangeError` when lengths differ, n < 2, all abscissas are equal, or a value is not finite.
 * Source: H. Theil (1950), Proc. Kon. Ned. Akad. v. Wetensch. A53, 386; P. K. Sen (1968), J. Am. Stat. Assoc. 63,
 * 1379, for pairs of equal abscissa and the 29 %.
 * @example theilSenLine([0, 1, 2, 3, 4], [1, 3, 5, 7, 100]) // { slope: 2, intercept: 1 }
 */
export function theilSenLine(abscissas: readonly number[], ordinates: readonly number[]): Line {
  requirePoints(abscissas, ordinates, 2);
  const step = Math.ceil(abscissas.length / MOST_POINTS);
  const chosen = abscissas.map((_, index) => index).filter((index) => index % step === 0);
  const [runs, rises] = [abscissas, ordinates].map((values) => Float64Array.from(chosen, (index) => values[index]!));
  const slopes = slopesOfPairs(runs!, rises!);
  if (slopes.length === 0) throw new RangeError("all abscissas are equal, so no line is determined");
  const slope = median(slopes);
  return { slope, intercept: median(chosen.map((index) => ordinates[index]! - slope * abscissas[index]!)) };
}

function slopesOfPairs(abscissas: Float64Array, ordinates: Float64Array): Float64Array {
  const slopes = new Float64Array((abscissas.length * (abscissas.length - 1)) / 2);
  let count = 0;
  for (let left = 0; left < abscissas.length; left += 1) {
    for (let right = left + 1; right < abscissas.length; right += 1) {
      const run = abscissas[right]! - abscissas[left]!;
      if (run !== 0) slopes[count++] = (ordinates[right]! - ordinates[left]!) / run;
    }
  }
  return slopes.subarray(0, count);
}
