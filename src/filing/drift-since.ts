import { leftState } from "../analysis/years/dated-states.ts";
import { daysPerYear, yearsBetween } from "../analysis/years/day-number.ts";
import { isSameSensor } from "../record/is-same-sensor.ts";
import { isSameRange } from "../record/range.ts";
import type { RegisterRow } from "../record/register-form.ts";
import type { PhaseInShort, RecordInShort } from "./index-entry.ts";

/** Over fewer days a drift a year says more about the noise than about the loop: own choice. */
const leastYears = 30 / daysPerYear;

/**
 * How fast the line of the error moved between two records: as found now minus as left before, at the range end that
 * moved more, percent of span a year.
 */
export function driftSince(before: RecordInShort | undefined, now: RecordInShort): RegisterRow["drift"] {
  if (before === undefined) return { notDetermined: "one record only" };
  if (!isSameRange(before, now)) return { notDetermined: "the range was another one" };
  if (!isSameSensor(before, now)) return { notDetermined: "another serial number" };
  const leftPhase = leftState(before);
  if (leftPhase === null) return { notDetermined: "the record before does not say how it left the loop" };
  const [left, found] = [lineEnds(leftPhase), lineEnds(now.asFound)];
  if (left === undefined || found === undefined) return { notDetermined: "no line was fitted" };
  if (before.performedOn === null || now.performedOn === null) return { notDetermined: "a day is not stated" };
  const years = yearsBetween(before.performedOn, now.performedOn);
  if (years < leastYears) return { notDetermined: "under 30 days apart" };
  const [lower, upper] = [found.lower - left.lower, found.upper - left.upper];
  return { percentSpanPerYear: (Math.abs(upper) > Math.abs(lower) ? upper : lower) / years };
}

/** The line of the error at the two ends of the range, percent of span. */
function lineEnds(phase: PhaseInShort | null): { lower: number; upper: number } | undefined {
  if (phase === null || phase.zeroError === null || phase.spanError === null) return undefined;
  return { lower: phase.zeroError, upper: phase.zeroError + phase.spanError };
}
