import type { Loop } from "../../../analysis/readings/loop.ts";
import type { StageEnds } from "../../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { leastOf } from "../../../numeric/least-and-greatest.ts";
import { mean } from "../../../numeric/mean.ts";
import { sampleStandardDeviation } from "../../../numeric/sample-standard-deviation.ts";
import { thresholds } from "./thresholds.ts";

/** Values that lie on a coarse grid. */
export type ValueGrid = { step: number; distinct: number };

/** Values that were rounded to a grid, with what that did to them. */
export type Rounding = ValueGrid & { meanInSteps: number };

/** Own choice: a grid is looked for down to this part of the smallest difference. */
const finestPart = 12;
/** Own choice: how seldom values that lie anywhere may fit a grid by chance. */
const chanceOfFit = 1e-3;

/**
 * The coarsest grid on which all the typed numbers of a list lie, each within the rounding of what was typed.
 *
 * @param values array of n numbers as typed
 * @param decimals that were typed at most
 * @returns step and how many values differ; undefined for fewer than three different ones
 * Source: a step is the smallest difference or a whole part of it, made better by least squares through the first value;
 *   where numbers that lie anywhere would fit so fine a grid once in a thousand times (own choice), the greatest common
 *   divisor of the differences in the last decimal by Euclid's algorithm.
 * @example valueGrid([2, 6, 6, 12, 2.0], 1) // { step: 2, distinct: 3 }
 */
export function valueGrid(values: readonly number[], decimals: number): ValueGrid | undefined {
  const distinct = [...new Set(values)].sort((one, other) => one - other);
  const [first] = distinct;
  if (first === undefined || distinct.length < 3) return undefined;
  const from = distinct.slice(1).map((value) => value - first);
  const step = uncommonStep(from, decimals) ?? decimalStep(from, decimals);
  return { step, distinct: distinct.length };
}

/** A step of any size, such as a division of whole numbers leaves. */
function uncommonStep(from: readonly number[], decimals: number): number | undefined {
  const smallest = leastOf(from.map((value, place) => value - (from[place - 1] ?? 0)));
  const typed = 10 ** -decimals;
  for (let part = 1; part <= finestPart; part++) {
    const step = fittedStep(from, smallest / part);
    if ((2 * typed) / step >= chanceOfFit ** (1 / (from.length - 1))) return undefined;
    const isOnGrid = from.every((value) => Math.abs(value - step * Math.round(value / step)) <= typed * roundingSlack);
    if (isOnGrid) return step;
  }
  return undefined;
}

/** A step of whole units of the last decimal. */
function decimalStep(from: readonly number[], decimals: number): number {
  const unit = 10 ** decimals;
  return from.map((value) => Math.round(value * unit)).reduce(commonDivisor, 0) / unit;
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}

/** Two numbers as typed are each off by half of the last decimal at most; a little more for binary fractions. */
const roundingSlack = 1 + 1e-6;

/** The step by which each value is a whole number of steps, made better from the nearest value to the farthest. */
function fittedStep(values: readonly number[], about: number): number {
  let [products, squares] = [0, 0];
  let step = about;
  for (const value of values) {
    const count = Math.round(value / step);
    products += count * value;
    squares += count * count;
    step = products / squares;
  }
  return step;
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
