import type { Direction } from "../model/calibration-words.ts";
import type { ReadingRecord } from "./record-schema.ts";

/** What can have been read of a loop at a test point, in the order in which the loop passes it on. */
export const readQuantities = ["signal", "signalAtCard", "counts", "value"] as const;
export type ReadQuantity = (typeof readQuantities)[number];

/** What of a reading this asks for. */
type FoundReading = Pick<ReadingRecord, "point" | "direction" | "leftOut" | ReadQuantity>;

/**
 * What was found at a test point in one direction: the mean of its readings.
 *
 * @param readings of one phase; those that are left out of every figure do not count
 * @param at nominal position of the test point, direction, and the quantity that is asked for
 * @returns mean in the quantity's own unit, and of how many readings; undefined where there is none
 * Source: JCGM 100:2008 (GUM), 4.2.1, the arithmetic mean; summed about the first, so that no digits are lost.
 * @example foundAtPoint([{ point: 0, direction: "rising", signal: 4.01 }, { point: 0, direction: "rising", signal: 4.03 }],
 *   { point: 0, direction: "rising", quantity: "signal" }) // { mean: 4.02, count: 2 }
 */
export function foundAtPoint(
  readings: readonly FoundReading[],
  { point, direction, quantity }: { point: number; direction: Direction; quantity: ReadQuantity },
): { mean: number; count: number } | undefined {
  const found = readings.flatMap((reading) => {
    const value = reading[quantity];
    const isHere = reading.point === point && reading.direction === direction && reading.leftOut === undefined;
    return isHere && value !== undefined ? [value] : [];
  });
  const [first] = found;
  if (first === undefined) return undefined;
  return { mean: first + found.reduce((sum, one) => sum + (one - first), 0) / found.length, count: found.length };
}
