import { groupedBy } from "../../model/grouped-by.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import { median } from "../../numeric/median.ts";
import { theilSenLine } from "../../numeric/theil-sen-line.ts";
import type { PlacedError, WildContext } from "../readings/wild-readings.ts";

/** A test point that lies off the line of all others in every one of its readings. */
export type LonePoint = {
  /** Of the test point, as its readings name it. */
  point: number;
  members: readonly number[];
  /** Where it lies along the input, and what the line of the others has as its error there. */
  input: number;
  expected: number;
  /** Distance of the median of its readings from the line of the others, unit of the errors. */
  deviation: number;
  /** Greatest distance of another point's median from that line. */
  others: number;
  /** Whether it is the first or the last along the input. */
  end: "lower" | "upper" | "none";
};

/** Own choice: with fewer others a bend is as likely. */
const fewestOthers = 4;
/** One reading alone is a wild one. */
const fewestReadings = 2;
/** The others lie on their line this much better; an end of a parabola misses the line of the rest by five times at most. */
const othersWithin = 1 / 8;
/** How far one of its readings may lie from their median, as a part of the deviation. */
const alikeWithin = 1 / 4;

/**
 * The one test point that is off alike in all its readings, while all others lie on one straight line.
 *
 * @param readings errors of one stage, without those that are no measurement
 * @param context smallest deviation that matters, what rounding hides
 * @returns the point; undefined where there is none, where the others are not straight, or where there are fewer than four
 * Source: own choice; the lines are those of H. Theil and P. K. Sen through the medians of the test points.
 * @example lonePoint([0, 20, 40, 60, 80, 100].flatMap((input, place) => [0, 1].map((cycle) => ({ index: 2 * place +
 *   cycle, point: input, input, error: place === 3 ? 2 : 0.01 * cycle }))), { mattering: 0.5, leastScatter: 0.01 })?.deviation
 *   // 1.995
 */
export function lonePoint(
  readings: readonly PlacedError[],
  { mattering, leastScatter }: WildContext,
): LonePoint | undefined {
  const middles = Array.from(
    groupedBy(readings, ({ point }) => point),
    ([point, group]) => ({
      point,
      group,
      input: median(group.map(({ input }) => input)),
      error: median(group.map(({ error }) => error)),
    }),
  ).sort((one, other) => one.input - other.input);
  if (new Set(middles.map(({ input }) => input)).size <= fewestOthers) return undefined;
  const ofAll = middles.map(offLineOf(middles)).map(Math.abs);
  const place = ofAll.indexOf(greatestOf(ofAll));
  const lone = middles[place]!;
  const rest = middles.toSpliced(place, 1);
  const offRest = offLineOf(rest);
  const deviation = offRest(lone);
  const others = greatestOf(rest.map(offRest).map(Math.abs));
  const size = Math.abs(deviation);
  const isAlike = lone.group.every(({ error }) => Math.abs(error - lone.error) <= alikeWithin * size);
  const isFar = size > Math.max(mattering, 2 * Math.sqrt(12) * leastScatter) && others <= othersWithin * size;
  if (!isFar || !isAlike || lone.group.length < fewestReadings) return undefined;
  const end = place === 0 ? "lower" : place === middles.length - 1 ? "upper" : "none";
  const members = lone.group.map(({ index }) => index);
  return { point: lone.point, members, input: lone.input, expected: lone.error - deviation, deviation, others, end };
}

type Middle = { input: number; error: number };

function offLineOf(bearing: readonly Middle[]): (judged: Middle) => number {
  const line = theilSenLine(
    bearing.map(({ input }) => input),
    bearing.map(({ error }) => error),
  );
  return ({ input, error }) => error - line.intercept - line.slope * input;
}
