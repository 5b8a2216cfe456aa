import { quickselect } from "simple-statistics";
import { greatestOf } from "./least-and-greatest.ts";
import { requireFinite } from "./require-finite.ts";

/** Of more values than this the middle is found without sorting all of them. */
const mostSorted = 200;

/**
 * Gives the median: the value in the middle, or the mean of the two in the middle.
 *
 * @param values array of n >= 1 finite numbers in any order, all in one unit
 * @returns the median, same unit, exact for odd n
 * Faults: `RangeError` for an empty list or a value that is not finite.
 * Source: ISO 3534-1:2006, 2.13 (sample median).
 * @example median([3, 1, 10, 2]) // 2.5
 */
export function median(values: readonly number[] | Float64Array): number {
  if (values.length === 0) throw new RangeError("no values, so there is no median");
  requireFinite("values", values);
  const ordered = Float64Array.from(values);
  const middle = ordered.length >> 1;
  const isLong = ordered.length > mostSorted;
  if (isLong) quickselect(ordered as unknown as number[], middle);
  else ordered.sort();
  const upper = ordered[middle] as number;
  if (ordered.length % 2 === 1) return upper;
  const lower = isLong ? greatestOf(ordered.subarray(0, middle)) : (ordered[middle - 1] as number);
  return (lower + upper) / 2;
}
