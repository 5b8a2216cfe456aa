import type { Loop } from "../../../analysis/readings/loop.ts";
import type { StageEnds } from "../../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { mean } from "../../../numeric/mean.ts";
import { sampleStandardDeviation } from "../../../numeric/sample-standard-deviation.ts";
import { thresholds } from "./thresholds.ts";

/** Values that lie on a coarse grid. */
export type ValueGrid = { step: number; distinct: number };

/** Values that were rounded to a grid, with what that did to them. */
export type Rounding = ValueGrid & { meanInSteps: number };

/**
 * The coarsest grid on which all the typed numbers of a list lie.
 *
 * @param values array of n numbers as typed
 * @param decimals that were typed at most
 * @returns step, the greatest common divisor of their differences, and how many values differ; undefined for fewer than
 *   three different ones
 * Source: Euclid's algorithm on whole numbers of the last decimal.
 * @example valueGrid([2, 6, 6, 12, 2.0], 1) // { step: 2, distinct: 3 }
 */
export function valueGrid(values: readonly number[], decimals: number): ValueGrid | undefined {
  const unit = 10 ** decimals;
  const distinct = [...new Set(values.map((value) => Math.round(value * unit)))];
  const [first] = distinct;
  if (first === undefined || distinct.length < 3) return undefined;
  const step = distinct.slice(1).reduce((divisor, value) => commonDivisor(divisor, Math.abs(value - first)), 0);
  return { step: step / unit, distinct: distinct.length };
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}

/**
 * The grid that values were rounded or cut off to, told from values that are round because the truth is.
 *
 * @param values as shown, n of them
 * @param ideals what they should be, same order and unit
 * @param decimals that were typed at most
 * @returns the grid and the mean error in steps, about −0.5 for a fraction that is cut off; undefined for fewer than five
 *   values, fewer than three different ones, or an error that does not scatter as rounding lets it
 * Source: rounding leaves errors spread over one step, a standard deviation of 0.29 steps; the limits are own choice.
 * @example roundingOf([1, 2, 3, 5, 8], [1.2, 2.9, 3.5, 5.6, 8.1], 0) // step 1, meanInSteps -0.46
 */
export function roundingOf(
  values: readonly number[],
  ideals: readonly number[],
  decimals: number,
): Rounding | undefined {
  const grid = values.length < 5 ? undefined : valueGrid(values, decimals);
  if (grid === undefined) return undefined;
  const errors = values.map((value, place) => value - (ideals[place] as number));
  const scatter = sampleStandardDeviation(errors) / grid.step;
  const isRounded = scatter >= thresholds.gridScatterPart && scatter <= 1 - thresholds.gridScatterPart;
  return isRounded ? { ...grid, meanInSteps: mean(errors) / grid.step } : undefined;
}

/**
 * The grid that the controller's values lie on, judged by what they should be for what the stage was given.
 *
 * @param ends of a stage whose output is the value
 * @param loop for the ideal lines
 * @param readings of the stage; those without value or input are passed over
 * @param decimals of the values as typed
 * @returns grid and mean error in steps, or undefined
 * Source: `roundingOf`.
 * @example valueRounding(evidence.stages[1], evidence.loop, evidence.readings, 2)?.step // 0.01
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
