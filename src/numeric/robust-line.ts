import { fitLine, type LineFit } from "./fit-line.ts";
import { greatestOf } from "./least-and-greatest.ts";
import { median } from "./median.ts";
import { requirePoints } from "./require-finite.ts";
import { type Line, theilSenLine } from "./theil-sen-line.ts";

/** A line that wild points did not move, and which points were taken as wild. */
export type RobustLine = {
  /** Least squares over the points that were kept. */
  readonly fit: LineFit;
  /** By index of the points given. */
  readonly excluded: readonly number[];
  /** Scatter about the line that the exclusion was judged by. */
  readonly scale: number;
};

/** A normal point lies farther out once in 1.7 million. */
const EXCLUDED_BEYOND = 5;

/** With fewer points the scatter about a line of medians says too little to call any of them wild. */
const FEWEST_TO_EXCLUDE = 6;

/** Turns a median absolute deviation into a standard deviation of normal values: 1/Φ⁻¹(3/4). */
const DEVIATION_PER_MEDIAN = 1.482602218505602;

/**
 * Fits a straight line by least squares to the points that belong to it, and names those that do not.
 *
 * A Theil–Sen line through the median of each group is drawn first; points farther from it than 5 scales are left out,
 * the scale being 1.4826 times the median absolute residual; the rest are fitted by least squares, which gives the
 * uncertainties.
 *
 * @param abscissas array of n >= 3 finite numbers, not all equal
 * @param ordinates array of n finite numbers, same order
 * @param groups lists of indexes that were taken at one place; every index belongs to one
 * @param leastScale >= 0, unit of the ordinates: what a rounded display hides, so that exact points are not called wild
 * @returns the line, the excluded indexes in rising order, the scale
 * Faults: `RangeError` when lengths differ, n < 3, all abscissas are equal, or a value is not finite.
 * Source: reweighted least squares, P. J. Rousseeuw and A. M. Leroy, Robust Regression and Outlier Detection (1987),
 * chapter 1; the start by Theil–Sen and the 5 are own choice: least squares alone would let one typing error tilt it.
 * @example robustLine([0, 1, 2, 3, 4, 5, 6], [0, 1, 2, 3, 4, 5, 60], [[0], [1], [2], [3], [4], [5], [6]], 0).excluded // [6]
 */
export function robustLine(
  abscissas: readonly number[],
  ordinates: readonly number[],
  groups: readonly (readonly number[])[],
  leastScale: number,
): RobustLine {
  requirePoints(abscissas, ordinates, 3);
  const start = startingLine(abscissas, ordinates, groups);
  const residuals = abscissas.map((abscissa, index) => ordinates[index]! - start.intercept - start.slope * abscissa);
  const scale = Math.max(robustScale(residuals), leastScale);
  const beyond = abscissas.length < FEWEST_TO_EXCLUDE ? [] : indexesBeyond(residuals, EXCLUDED_BEYOND * scale);
  const without = abscissas.map((_, index) => index).filter((index) => !beyond.includes(index));
  // Where most points stand in one place, those elsewhere are no wild ones: without them there is no line.
  const isLine = new Set(valuesAt(abscissas, without)).size > 1;
  const excluded = isLine ? beyond : [];
  const kept = isLine ? without : abscissas.map((_, index) => index);
  return { fit: fitLine(valuesAt(abscissas, kept), valuesAt(ordinates, kept)), excluded, scale };
}

/**
 * Gives the scatter of values about zero as a standard deviation that a few wild values do not move.
 *
 * @param deviations array of n >= 1 finite numbers about zero
 * @returns 1.4826 times the median of their sizes, same unit; for normal values the standard deviation
 * Faults: `RangeError` for an empty list or a value that is not finite.
 * Source: F. R. Hampel (1974), J. Am. Stat. Assoc. 69, 383, median absolute deviation.
 * @example robustScale([-1, 1, -1, 1, 100]) // 1.482602218505602
 */
export function robustScale(deviations: readonly number[]): number {
  return DEVIATION_PER_MEDIAN * median(deviations.map(Math.abs));
}

// Where the groups leave no line (all in one place but for a few), the points themselves are taken.
function startingLine(
  abscissas: readonly number[],
  ordinates: readonly number[],
  groups: readonly (readonly number[])[],
): Line {
  const places = groups.map((group) => median(valuesAt(abscissas, group)));
  if (new Set(places).size < 2) return theilSenLine(abscissas, ordinates);
  return theilSenLine(
    places,
    groups.map((group) => median(valuesAt(ordinates, group))),
  );
}

// A few units in the last place are no deviation: points that lie on the line exactly have a scale of about 0.
function indexesBeyond(residuals: readonly number[], limit: number): readonly number[] {
  const rounding = 1e-12 * greatestOf([...residuals.map(Math.abs), 1]);
  return residuals.flatMap((residual, index) => (Math.abs(residual) > limit + rounding ? [index] : []));
}

function valuesAt(values: readonly number[], indexes: readonly number[]): readonly number[] {
  return indexes.map((index) => values[index]!);
}
