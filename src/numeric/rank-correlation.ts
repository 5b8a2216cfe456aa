import { fitLine } from "./fit-line.ts";
import { requirePoints } from "./require-finite.ts";

/**
 * Gives the correlation of the ranks of two lists: how far one rises wherever the other does, whatever the shape.
 *
 * One wild value moves it little, for its rank is no wilder than that of the greatest of the others.
 *
 * @param abscissas array of n >= 2 finite numbers, any order
 * @param ordinates array of n finite numbers, same order
 * @returns −1 to 1; equal values share the mean of their ranks; 0 where all values of one list are equal
 * Faults: `RangeError` when lengths differ, n < 2, or a value is not finite.
 * Source: C. Spearman (1904), Am. J. Psychol. 15, 72; the product-moment correlation of the ranks, so that ties count.
 * @example rankCorrelation([1, 2, 3, 4], [1, 4, 9, 1000]) // 1
 */
export function rankCorrelation(abscissas: readonly number[], ordinates: readonly number[]): number {
  requirePoints(abscissas, ordinates, 2);
  const across = ranksOf(abscissas);
  const upward = ranksOf(ordinates);
  if (new Set(across).size < 2 || new Set(upward).size < 2) return 0;
  const { rSquared, slope } = fitLine(across, upward);
  return Math.sign(slope) * Math.sqrt(Math.max(0, rSquared ?? 0));
}

/** Ranks from 1 on; equal values share the mean of the places that they take. */
function ranksOf(values: readonly number[]): readonly number[] {
  const order = values.map((_, index) => index).sort((left, right) => values[left]! - values[right]!);
  const ranks: number[] = [];
  for (let first = 0; first < order.length; ) {
    let after = first + 1;
    while (after < order.length && values[order[after]!] === values[order[first]!]) after += 1;
    for (const index of order.slice(first, after)) ranks[index] = (first + 1 + after) / 2;
    first = after;
  }
  return ranks;
}
