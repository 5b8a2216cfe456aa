import { numberWords } from "../loop-check/limit-words.ts";
import type { DriftFindings, DriftInterval } from "./drift-history.ts";

const noInterval =
  "The filed history has no test point in common with these readings, or the last record adjusted the loop and did not read it again.";

/**
 * What the filed history says, in sentences.
 *
 * @param drift of `driftHistory`
 * @param unit of the distances
 * @returns one sentence or more, also where there is no history
 * Source: own choice.
 * @example driftReasons({ earlier: null, intervals: [], isTaughtTwice: false, growth: null, isOfWholeLoop: false }, "mm")
 *   // ["No filed history was given."]
 */
export function driftReasons(drift: DriftFindings, unit: string): string[] {
  const { earlier, intervals, growth } = drift;
  if (earlier === null) return ["No filed history was given."];
  if (earlier === 0) return ["The filed history holds no earlier record of this tag."];
  if (intervals.length === 0) return [noInterval];
  const told = intervals.map((interval) => intervalWords(interval, unit));
  if (intervals.length === 1) return [...told, "One interval does not show how the drift goes on."];
  if (growth === null) return told;
  return [...told, `That is ${numberWords(growth, null, 2)} times as fast as in the interval before.`];
}

function intervalWords(
  { from, to, adjustment, point, drift, uncertainty, years }: DriftInterval,
  unit: string,
): string {
  const sign = drift > 0 ? "+" : "";
  const time = years === null ? "" : ` in ${yearsWords(numberWords(years, null, 2))}`;
  const start = adjustment === null || adjustment === "none" ? "" : `, after ${adjustment}`;
  return (
    `From ${from} to ${to}${start}: ${sign}${numberWords(drift, unit, 2)} at ${numberWords(point, unit)}${time}` +
    ` (U ${numberWords(uncertainty, unit, 2)}).`
  );
}

function yearsWords(count: string): string {
  return `${count} ${count === "1" ? "year" : "years"}`;
}
