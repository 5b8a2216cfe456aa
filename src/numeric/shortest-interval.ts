/** An interval that holds a stated share of the values. */
export type CoverageInterval = { readonly low: number; readonly high: number };

/**
 * Gives the shortest interval that covers a share of many random values.
 *
 * With q the share of n, rounded to a whole number, the ends are y(r) and y(r + q), r being where they lie closest.
 *
 * @param sorted array of n finite numbers in ascending order, any unit
 * @param share 0 < p < 1, and such that the rounded p·n is at least 1 and under n
 * @returns low and high end, unit of the values; the first of several that are equally short. Its length is better known
 * than its place: where values are spread symmetrically its ends wander by more than those of `symmetricInterval`
 * Faults: `RangeError` when the values are not in order or not finite, or when they are too few for the share.
 * Source: JCGM 101:2008, 5.3.4 and 7.7.4.
 * @example shortestInterval([5, 6, 7, 8, 12, 20], 0.5) // low 5, high 8
 */
export function shortestInterval(sorted: Float64Array | readonly number[], share: number): CoverageInterval {
  const steps = stepsOf(sorted, share);
  let first = 0;
  for (let index = 1; index + steps < sorted.length; index++) {
    if (sorted[index + steps]! - sorted[index]! < sorted[first + steps]! - sorted[first]!) first = index;
  }
  return { low: sorted[first]!, high: sorted[first + steps]! };
}

/**
 * Gives the interval that leaves as many of the random values below it as above it.
 *
 * @param sorted array of n finite numbers in ascending order, any unit
 * @param share 0 < p < 1, as for `shortestInterval`
 * @returns low and high end, unit of the values
 * Faults: `RangeError` as for `shortestInterval`.
 * Source: JCGM 101:2008, 5.3.3 and 7.7.2.
 * @example symmetricInterval([5, 6, 7, 8, 12, 20], 0.5) // low 6, high 12
 */
export function symmetricInterval(sorted: Float64Array | readonly number[], share: number): CoverageInterval {
  const steps = stepsOf(sorted, share);
  const first = Math.floor((sorted.length - steps + 1) / 2) - 1;
  return { low: sorted[first]!, high: sorted[first + steps]! };
}

function stepsOf(sorted: Float64Array | readonly number[], share: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`a share of ${share} is not between 0 and 1`);
  const steps = Math.floor(share * sorted.length + 0.5);
  if (steps < 1 || steps >= sorted.length)
    throw new RangeError(`${sorted.length} values are too few for a share of ${share}`);
  requireAscending(sorted);
  return steps;
}

function requireAscending(values: Float64Array | readonly number[]): void {
  if (!Number.isFinite(values[0]) || !Number.isFinite(values[values.length - 1]))
    throw new RangeError("a value is not finite");
  for (let index = 1; index < values.length; index++) {
    // NaN fails this comparison too.
    if (!(values[index]! >= values[index - 1]!)) throw new RangeError("the values are not in ascending order");
  }
}
