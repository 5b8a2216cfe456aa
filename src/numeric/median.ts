import { requireFinite } from "./require-finite.ts";

/**
 * Gives the median: the value in the middle, or the mean of the two in the middle.
 *
 * @param values array of n >= 1 finite numbers in any order, all in one unit
 * @returns the median, same unit, exact for odd n
 * Faults: `RangeError` for an empty list or a value that is not finite.
 * Source: ISO 3534-1:2006, 2.13 (sample median).
 * @example median([3, 1, 10, 2]) // 2.5
 */
export function median(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError("no values, so there is no median");
  requireFinite("values", values);
  const sorted = Float64Array.from(values).sort();
  const middle = sorted.length >> 1;
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2;
}
