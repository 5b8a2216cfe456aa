import type { Instrument } from "../model/instrument.ts";
import type { ReadQuantity } from "./found-at-point.ts";
import { spanOf } from "./range.ts";

/** The ends of each quantity along a loop. */
export type ScaledLoop = Pick<
  Instrument,
  | "rangeLower"
  | "rangeUpper"
  | "signalLower"
  | "signalUpper"
  | "countsLower"
  | "countsUpper"
  | "valueLower"
  | "valueUpper"
>;

/**
 * What a stage of the loop is meant to give at a distance: what a meter in the loop should show there.
 *
 * @param loop range, and the ends of its signal, counts and controller value
 * @param quantity of the loop
 * @param distance in the unit of the range
 * @returns in the quantity's own unit; undefined where its ends are not stated
 * Source: definition: the straight line between the ends.
 * @example idealOutput({ rangeLower: 200, rangeUpper: 2000, signalLower: 4, signalUpper: 20 }, "signal", 1100) // 12
 */
export function idealOutput(loop: ScaledLoop, quantity: ReadQuantity, distance: number): number | undefined {
  const [lower, upper] = endsOf(loop, quantity);
  if (lower === undefined || upper === undefined) return undefined;
  return lower + ((distance - loop.rangeLower) * (upper - lower)) / spanOf(loop);
}

function endsOf(loop: ScaledLoop, quantity: ReadQuantity): readonly [number | undefined, number | undefined] {
  if (quantity === "counts") return [loop.countsLower, loop.countsUpper];
  if (quantity === "value") return [loop.valueLower, loop.valueUpper];
  return [loop.signalLower, loop.signalUpper];
}
