import { greatestDistanceOf, type Range } from "../model/range.ts";
import { isInside } from "../units/is-inside.ts";
import type { ReadingRecord } from "./record-schema.ts";

/** The limits of the error at a reading or a test point; distance. */
export type ToleranceAt = Pick<ReadingRecord, "toleranceLow" | "toleranceHigh">;

/**
 * Whether an error lies outside the tolerance; on a limit is inside.
 *
 * A reading's verdict may speak of its controller value, and a test point's statement counts its uncertainty: this is
 * asked of one error alone, whichever rule holds.
 *
 * @param error distance
 * @param tolerance of its reading or test point
 * @param range of the instrument, for how a distance of it is stored
 * @returns true where the error as it is, not as it is printed, lies beyond a limit
 * Source: ILAC-G8:09/2019, simple acceptance; `isInside`.
 * @example isOutside(5.1, { toleranceLow: -5, toleranceHigh: 5 }, { rangeLower: 0, rangeUpper: 1000 }) // true
 */
export function isOutside(error: number, { toleranceLow, toleranceHigh }: ToleranceAt, range: Range): boolean {
  return !isInside(error, { low: toleranceLow, high: toleranceHigh }, greatestDistanceOf(range));
}
