import { daysPerMonth } from "../../analysis/years/day-number.ts";
import { isInTolerance } from "../../model/statement.ts";
import { isInside } from "../../units/is-inside.ts";
import type { EndedInterval } from "./ended-intervals.ts";
import type { IntervalSettings } from "./interval-settings.ts";

/** The intervals that ended one after the other, the last one last; a gap where one did not end. */
export type EndedInARow = readonly [...(EndedInterval | undefined)[], EndedInterval];

/** Why the step goes up, down or nowhere. */
export type StaircaseReason =
  | "well inside"
  | "well inside, not often enough"
  | "inside, but not well"
  | "only just accepted"
  | "out of tolerance"
  | "calibrated early"
  | "no test point judged";

/** A step of the staircase: from so many months to so many; how many results in a row lay well inside. */
export type StaircaseStep = {
  reason: StaircaseReason;
  from: number;
  factor: number;
  months: number;
  wellInside: number;
};

/**
 * The next interval by method 1, automatic adjustment or "staircase": longer where the loop was found well inside its
 * tolerance several times running, each time at the end of such an interval; shorter where it was found outside once.
 *
 * One result well inside says little: a loop that is outside at one interval's end in five is well inside at most of the
 * others. So a longer interval asks for two in a row (`extendAfter`), a shorter one for none.
 *
 * @param ended how the loop was found, interval after interval
 * @param months between calibrations so far, whole
 * @param settings limits, factors and caps
 * @returns whole months, rounded down, and the reason; a proposal and no more
 * Source: ILAC-G24:2022 / OIML D 10, 6.2 (method 1); that more than the last result counts before an interval is made
 *   longer, factors, caps and the shorter interval after a conditional pass are own choice.
 * @example staircaseInterval([{ asFound: "pass", partOfTolerance: 0.5, days: 366 }, { asFound: "pass",
 *   partOfTolerance: 0.4, days: 365 }], 12, usualIntervalSettings)
 *   // { reason: "well inside", from: 12, factor: 1.25, months: 15, wellInside: 2 }
 */
export function staircaseInterval(ended: EndedInARow, months: number, settings: IntervalSettings): StaircaseStep {
  const reasons = ended.map((one) => one && reasonOf(one, months, settings));
  const wellInside = reasons.length - 1 - reasons.findLastIndex((reason) => reason !== "well inside");
  const last = reasons.at(-1) as StaircaseReason;
  const reason = last === "well inside" && wellInside < settings.extendAfter ? "well inside, not often enough" : last;
  const factor = factorOf(reason, settings);
  // A product such as 100 · 0.29 is stored a little under the whole number that it is.
  const stepped = Math.floor(months * factor + 1e-9);
  const capped = Math.min(Math.max(stepped, settings.leastMonths), settings.mostMonths);
  const step = { reason, from: months, factor, wellInside };
  if (factor === 1) return { ...step, months };
  // A cap never turns a step round.
  return { ...step, months: factor > 1 ? Math.max(months, capped) : Math.min(months, capped) };
}

function reasonOf(
  { asFound, partOfTolerance, days }: EndedInterval,
  months: number,
  settings: IntervalSettings,
): StaircaseReason {
  if (!isInTolerance(asFound)) return "out of tolerance";
  if (asFound === "conditional pass") return "only just accepted";
  if (partOfTolerance === null) return "no test point judged";
  if (!isInside(partOfTolerance, { low: null, high: settings.extendWithin })) return "inside, but not well";
  return days < settings.fullInterval * months * daysPerMonth ? "calibrated early" : "well inside";
}

function factorOf(reason: StaircaseReason, settings: IntervalSettings): number {
  if (reason === "well inside") return settings.extendBy;
  if (reason === "only just accepted") return settings.shortenConditionalBy;
  return reason === "out of tolerance" ? settings.shortenBy : 1;
}
