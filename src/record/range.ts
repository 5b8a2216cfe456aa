export { spanOf } from "../model/range.ts";

import type { RecordSummary } from "./record-summary-schema.ts";

/** What a record says of the range that it was made over. */
export type OverRange = Pick<RecordSummary, "distanceUnit" | "rangeLower" | "rangeUpper">;

/**
 * Whether two records are of the same range in the same unit: otherwise their errors are those of two loops.
 *
 * @param one record, summary or instrument
 * @param other the same
 * @returns true where both ends and the unit are equal
 * Source: own choice: an error in percent of another span, or at another end, says nothing of this one.
 * @example isSameRange({ distanceUnit: "mm", rangeLower: 0, rangeUpper: 100 }, { distanceUnit: "cm", rangeLower: 0,
 *   rangeUpper: 10 }) // false
 */
export function isSameRange(one: OverRange, other: OverRange): boolean {
  return (
    one.distanceUnit === other.distanceUnit &&
    one.rangeLower === other.rangeLower &&
    one.rangeUpper === other.rangeUpper
  );
}
