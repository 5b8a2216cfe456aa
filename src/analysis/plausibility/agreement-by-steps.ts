import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { decimalsOf } from "../../units/decimal-mark.ts";
import { type CopiedReading, digitsOf } from "./digits-of.ts";

const columns = ["reference", "signal", "signalAtCard", "counts", "value"] as const;
/** Of fewer steps between repeats, a display is coarse, and steps say nothing of how often its digits come again. */
const fewestSteps = { reference: 3, output: 10 };
/** Median size of the difference of two normal quantities, over their standard deviation. */
const medianDifference = 0.6745 * Math.SQRT2;

/**
 * The chance that two readings of one place agree in every number, where their digits are fine against what they scatter by:
 * d/(2√π·s) for the reference, times that of the finest output.
 *
 * s from repeats that differ, at a place where some agree and beside it, by the median of their differences; d the greatest
 * step of which all differences of the column are multiples; of all such places the greatest chance.
 *
 * @param groups repeated readings of a phase, a group for each place and direction, by rising place
 * @returns chance, at most 1; 1 where an output scatters by less than ten of its steps, 0 where no readings agree
 * Source: chance that two equal normal quantities fall on one step; the median and its limits are own choice.
 * @example agreementBySteps([[0, 41, 90, 90].map((step) => ({ direction: "rising", reference: 50, signal: 12 + step / 1000
 *   }))]) // 0.005980
 */
export function agreementBySteps(groups: readonly (readonly CopiedReading[])[]): number {
  const steps = columns.map((column) => stepOf(groups, column));
  const chanceAt = (place: number): number => {
    const near = groups.slice(Math.max(0, place - 2), place + 3);
    const [reference = 1, ...outputs] = columns.map((column, at) => agreementOf(near, column, steps[at] as number));
    return reference * leastOf([1, ...outputs]);
  };
  return greatestOf([0, ...groups.flatMap((group, place) => (hasAlike(group) ? [chanceAt(place)] : []))]);
}

function hasAlike(group: readonly CopiedReading[]): boolean {
  return new Set(group.map(digitsOf)).size < group.length;
}

type Column = (typeof columns)[number];

function numbersOf(group: readonly CopiedReading[], column: Column): readonly number[] {
  return group.flatMap((reading) => reading[column] ?? []);
}

/** The greatest step of which all differences of a column are multiples: that of the display, or of what was written. */
function stepOf(groups: readonly (readonly CopiedReading[])[], column: Column): number {
  const numbers = groups.flatMap((group) => numbersOf(group, column));
  const unit = 10 ** -greatestOf([0, ...numbers.map((number) => decimalsOf(String(number)))]);
  const [first = 0] = numbers;
  const common = numbers.reduce(
    (divisor, number) => commonDivisor(divisor, Math.round(Math.abs(number - first) / unit)),
    0,
  );
  return common * unit;
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}

function agreementOf(near: readonly (readonly CopiedReading[])[], column: Column, step: number): number {
  const apart = near
    .flatMap((group) => differencesOf(numbersOf(group, column)))
    .filter((difference) => difference > step / 2);
  if (apart.length === 0) return 1;
  const steps = median(apart) / step;
  return steps < fewestSteps[column === "reference" ? "reference" : "output"]
    ? 1
    : medianDifference / (2 * Math.sqrt(Math.PI) * steps);
}

/** Of each number from the one before it, which of many repeats is enough. */
function differencesOf(numbers: readonly number[]): readonly number[] {
  return numbers.slice(1).map((number, at) => Math.abs(number - (numbers[at] as number)));
}
