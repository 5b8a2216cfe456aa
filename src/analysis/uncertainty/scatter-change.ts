import { fitLine } from "../../numeric/fit-line.ts";
import { studentTQuantile } from "../../numeric/student-t-quantile.ts";

/** Two-sided chance of finding a change where there is none. */
const changeChance = 0.05;
/** Fewer sizes, or fewer distances, show no change: own choice. */
const fewestSizes = 5;
const fewestDistances = 3;

/**
 * Whether sizes of a scatter change along the range: the slope of their least-squares line on the distance is beyond
 * Student's t at 95 %.
 *
 * @param references n distances, any unit, any order
 * @param sizes n standard deviations, or sizes of deviations, at these distances
 * @returns false for fewer than five sizes or three distances
 * Faults: `RangeError` as `fitLine`.
 * Source: H. Glejser (1969), J. Am. Stat. Assoc. 64, 316.
 * @example doesScatterChange([0, 1, 2, 3, 4, 5], [1, 2, 4, 5, 5, 7]) // true
 */
export function doesScatterChange(references: readonly number[], sizes: readonly number[]): boolean {
  if (sizes.length < fewestSizes || new Set(references).size < fewestDistances) return false;
  const { slope, slopeStdError, degreesOfFreedom } = fitLine(references, sizes);
  return Math.abs(slope) > studentTQuantile(1 - changeChance / 2, degreesOfFreedom) * (slopeStdError as number);
}
