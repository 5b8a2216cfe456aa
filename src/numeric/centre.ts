import { sum } from "simple-statistics";
import { mean } from "./mean.ts";

/** A list split into its mean and what each value stands above it. */
export type CentredValues = { readonly mean: number; readonly deviations: readonly number[] };

/**
 * Splits readings into their mean and their deviations from it, so that squares and products are taken of small numbers.
 *
 * The mean is a rounded number: at an offset of 1e7 it is off by up to 1e-9 and every deviation with it. What the
 * deviations themselves average to is that rounding, and it is taken off them again.
 *
 * @param values array of n >= 1 finite numbers in any order, all in one unit
 * @returns the mean, and n deviations (value minus mean, same unit and order) whose sum is 0 but for rounding
 * Faults: `RangeError` for an empty list or a value that is not finite.
 * Source: the corrected two-pass algorithm, T. F. Chan, G. H. Golub, R. J. LeVeque, "Algorithms for computing the
 * sample variance", Am. Stat. 37, 242 (1983).
 * @example centre([1, 2, 6]) // { mean: 3, deviations: [-2, -1, 3] }
 */
export function centre(values: readonly number[]): CentredValues {
  const roundedMean = mean(values);
  const offsets = values.map((value) => value - roundedMean);
  const correction = mean(offsets);
  return { mean: roundedMean + correction, deviations: offsets.map((offset) => offset - correction) };
}

/**
 * Adds up the products of two lists, term by term.
 *
 * @param left array of n finite numbers
 * @param right array of n finite numbers; give the same list twice for a sum of squares
 * @returns sum of left[i] * right[i], in the product of the two units; the sum is compensated, each product is rounded
 * Faults: `RangeError` when the lengths differ.
 * Source: own choice.
 * @example sumOfProducts([-2, -1, 3], [-2, -1, 3]) // 14
 */
export function sumOfProducts(left: readonly number[], right: readonly number[]): number {
  if (left.length !== right.length) throw new RangeError(`${left.length} values against ${right.length}`);
  return sum(left.map((value, index) => value * right[index]!));
}
