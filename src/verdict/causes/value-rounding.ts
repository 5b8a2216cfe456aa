import type { Loop } from "../../analysis/readings/loop.ts";
import type { StageEnds } from "../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading } from "../../analysis/stages/staged-readings.ts";
import { type Rounding, roundingOf } from "./value-grid.ts";

/**
 * The grid that the controller's values lie on, judged by what they should be for what the stage was given.
 *
 * @param ends of a stage whose output is the value
 * @param loop for the ideal lines
 * @param readings of the stage; those without value or input are passed over
 * @param decimals of the values as typed
 * @returns grid and mean error in steps, or undefined
 * Source: `roundingOf`.
 * @example valueRounding(stage, loop, staged, 2)?.step // 1
 */
export function valueRounding(
  { input }: StageEnds,
  loop: Loop,
  readings: readonly StagedReading[],
  decimals: number,
): Rounding | undefined {
  const complete = readings.filter(({ percent }) => percent.value !== undefined && percent[input] !== undefined);
  return roundingOf(
    complete.map(({ reading }) => reading.value as number),
    complete.map(({ percent }) => inUnitOf(loop, "value", percent[input] as number)),
    decimals,
  );
}
