import { groupedBy } from "../../model/grouped-by.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { robustScale } from "../../numeric/robust-line.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";
import type { StagedReading } from "../stages/staged-readings.ts";
import type { Loop } from "./loop.ts";

// A signal that stands at the end of what it can say tells "at or beyond", and no number.

/** NAMUR NE 43: a 4–20 mA signal measures from 3.8 to 20.5 mA; in percent of its span. */
const milliampLevels = { low: -1.25, high: 103.125 } as const;
/** How near to such a level a signal stands at it, percent of span: 0.02 mA, what sensors and meters leave of it. */
const levelWithin = 0.125;
/** Readings that stand still at an end; and readings that make the line which says where the signal should be. */
const fewestStill = 3;
const fewestOnLine = 3;
/** Own choice: the line of the rest lies so many of its scatters beyond the level. */
const beyondScatters = 4;
const beyondSteps = 2;
/** Beyond a nominal end by this much, percent of span, an output does not come to rest by itself. */
const pastEnd = 0.4;

/** What railed readings are told by besides themselves, percent of span: a step of what was displayed. */
export type RailContext = { loop: Loop; step: number; mattering: number };

/** A reading whose signal stands at an end of what it can say, and what the line of the others says in its place. */
export type Rail = {
  index: number;
  /** End of the signal, not of the range: a falling signal is high at the lower end of the range. */
  end: "low" | "high";
  /** What the signal should be by the others, percent of span: 0 at the lower end of the range. */
  expected: number;
  /** The ideal signal of this place stands at the same end, so the loop shows what it should. */
  isIdealRailed: boolean;
};

type Seen = { index: number; point: number; input: number; output: number };

/**
 * The readings whose signal stands at an end of what the output can give.
 *
 * At one end of the signal stand: a 4–20 mA signal at 3.8 or 20.5 mA or beyond, another one at its true zero, or three
 * readings or more that do not move while the reference does, or that are past the nominal end. They are railed where the
 * line of the other readings says that the signal should be farther out; where there are no others, by the ideal signal.
 *
 * @param readings of one phase, without those whose signal reports a fault
 * @param context loop, a step of the display, smallest error that matters
 * @returns rails, in the order of the readings; none where some others are left, and fewer than three, to say so. Where
 *   every reading stands past the nominal end while the reference moves, all of them
 * Source: NAMUR NE 43 for the levels of 4–20 mA; that a line has to say so is own choice.
 * @example railedReadings(evidence.readings, { loop: evidence.loop, step: 0.01, mattering: 0.25 }) // []
 */
export function railedReadings(readings: readonly StagedReading[], context: RailContext): readonly Rail[] {
  const { outputAtLower, outputAtUpper } = context.loop.characteristics.signal;
  const isReverse = outputAtUpper < outputAtLower;
  // In percent of the signal's own span, so that the low end is the low end of the output.
  const own = (percent: number) => (isReverse ? 100 - percent : percent);
  const seen = readings.flatMap(({ index, point, percent }): Seen[] =>
    percent.reference === undefined || percent.signal === undefined
      ? []
      : [{ index, point, input: own(percent.reference), output: own(percent.signal) }],
  );
  const low = railedAt("low", seen, context);
  const high = railedAt(
    "high",
    seen.filter(({ index }) => !low.some((rail) => rail.index === index)),
    context,
  );
  return [...low, ...high]
    .map((rail) => ({ ...rail, expected: own(rail.expected) }))
    .toSorted((one, other) => one.index - other.index);
}

function railedAt(end: "low" | "high", seen: readonly Seen[], context: RailContext): readonly Rail[] {
  const side = end === "high" ? 1 : -1;
  const levels = seen.map(({ output }) => side * output);
  const level = greatestOf(levels);
  const width = Math.max(beyondSteps * context.step, levelWithin / 2);
  const there = seen.filter((_, place) => levels[place]! >= level - width || isAtLevel(end, levels[place]!, context));
  if (there.length === 0 || !standsStill(end, there, level, width, context)) return [];
  const rest = seen.filter((one) => !there.includes(one));
  if (rest.length === 0) return allThere(end, there, level, context);
  const line = lineOf(rest);
  if (line === undefined) return [];
  const scatter = robustScale(rest.map(({ input, output }) => output - line.intercept - line.slope * input));
  // Held against the outermost of them: noise alone puts one of several readings farther in than the line.
  const beyond = Math.max(beyondScatters * scatter, beyondSteps * context.step, context.mattering / 4);
  const isBeyond = ({ input }: Seen) => side * (line.intercept + line.slope * input) - level > beyond;
  return there
    .filter((one) => isBeyond(one) && isOfItsPoint(one, there, isBeyond))
    .map(({ index, input, output }) => {
      const expected = line.intercept + line.slope * input;
      const isIdealRailed = side * (input - output) >= -Math.max(levelWithin, context.step);
      return { index, end, expected, isIdealRailed };
    });
}

/** A rail is one of its test point: where the most of its readings are none, the reference of this one is in doubt. */
function isOfItsPoint({ point }: Seen, there: readonly Seen[], isBeyond: (one: Seen) => boolean): boolean {
  const same = there.filter((one) => one.point === point);
  return 2 * same.filter(isBeyond).length >= same.length;
}

/** Own choice, percent of span: a reference that moved by so much would have moved the signal. */
const movedBy = 20;

/** Where every reading stands past the nominal end, no line says where the signal should be: the ideal one does, as far as it moved. */
function allThere(end: "low" | "high", there: readonly Seen[], level: number, context: RailContext): readonly Rail[] {
  const side = end === "high" ? 1 : -1;
  const inputs = there.map(({ input }) => input);
  const isPastEnd = isAtLevel(end, level, context) || level > (end === "high" ? 100 : 0) + pastEnd;
  if (!isPastEnd || isTrueZero(end, level, context.loop) || greatestOf(inputs) - leastOf(inputs) < movedBy) return [];
  return there.map(({ index, input, output }) => ({
    index,
    end,
    expected: input,
    isIdealRailed: side * (input - output) >= -Math.max(levelWithin, context.step),
  }));
}

function isAtLevel(end: "low" | "high", level: number, { loop }: RailContext): boolean {
  if (!hasLevels(loop)) return false;
  return end === "high" ? level >= milliampLevels.high - levelWithin : level >= -(milliampLevels.low + levelWithin);
}

function hasLevels({ signalUnit, characteristics: { signal } }: Loop): boolean {
  const [low, high] = [signal.outputAtLower, signal.outputAtUpper].toSorted((one, other) => one - other);
  return signalUnit === "mA" && low === 4 && high === 20;
}

/** At a level that is known, or so that it cannot be chance. */
function standsStill(
  end: "low" | "high",
  there: readonly Seen[],
  level: number,
  width: number,
  context: RailContext,
): boolean {
  if (isAtLevel(end, level, context) || isTrueZero(end, level, context.loop)) return true;
  const inputs = there.map(({ input }) => input);
  const moved = greatestOf(inputs) - leastOf(inputs);
  const isStill = there.length >= fewestStill && (moved > 4 * width || level > (end === "high" ? 100 : 0) + pastEnd);
  const isAtEnd = level >= (end === "high" ? 100 : 0) - pastEnd;
  return isStill && isAtEnd;
}

/** An output that does not go below zero cannot give less than nothing; one of both signs can. */
function isTrueZero(end: "low" | "high", level: number, { characteristics: { signal } }: Loop): boolean {
  const [low, high] = [signal.outputAtLower, signal.outputAtUpper].toSorted((one, other) => one - other) as [
    number,
    number,
  ];
  const zero = (-100 * low) / (high - low);
  return end === "low" && low >= 0 && -level <= zero + levelWithin;
}

function lineOf(rest: readonly Seen[]) {
  const byPoint = [...groupedBy(rest, ({ point }) => point).values()];
  const inputs = byPoint.map((group) => median(group.map(({ input }) => input)));
  if (rest.length < fewestOnLine || new Set(inputs).size < 2) return undefined;
  return theilSenLine(
    inputs,
    byPoint.map((group) => median(group.map(({ output }) => output))),
  );
}
