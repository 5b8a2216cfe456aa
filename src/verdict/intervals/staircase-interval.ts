import { daysPerMonth } from "../../analysis/years/day-number.ts";
import { isInTolerance, type Statement } from "../../model/statement.ts";
import { isInside } from "../../units/is-inside.ts";
import type { IntervalSettings } from "./interval-settings.ts";

/** The interval that has just ended, and how the loop was found. */
export type EndedInterval = {
  asFound: Statement;
  /** The mean error that takes up the most of its tolerance, as a part of it; null where no test point was judged. */
  partOfTolerance: number | null;
  /** Whole months between calibrations so far. */
  months: number;
  days: number;
};

/** Why the step goes up, down or nowhere. */
export type StaircaseReason =
  | "well inside"
  | "inside, but not well"
  | "only just accepted"
  | "out of tolerance"
  | "calibrated early"
  | "no test point judged";

/** A step of the staircase: from so many months to so many. */
export type StaircaseStep = { reason: StaircaseReason; from: number; factor: number; months: number };

/**
 * The next interval by method 1, automatic adjustment or "staircase": longer where the loop was found well inside its
 * tolerance, shorter where it was found outside.
 *
 * @param ended how the loop was found, after how long
 * @param settings limits, factors and caps
 * @returns whole months, rounded down, and the reason; a proposal and no more
 * Source: ILAC-G24:2022 / OIML D 10, 6.2 (method 1); factors, caps and the shorter interval after a conditional pass are
 *   own choice.
 * @example staircaseInterval({ asFound: "pass", partOfTolerance: 0.4, months: 12, days: 365 }, usualIntervalSettings)
 *   // { reason: "well inside", from: 12, factor: 1.25, months: 15 }
 */
export function staircaseInterval(ended: EndedInterval, settings: IntervalSettings): StaircaseStep {
  const { months: from } = ended;
  const reason = reasonOf(ended, settings);
  const factor = factorOf(reason, settings);
  // A product such as 100 · 0.29 is stored a little under the whole number that it is.
  const stepped = Math.floor(from * factor + 1e-9);
  const capped = Math.min(Math.max(stepped, settings.leastMonths), settings.mostMonths);
  if (factor === 1) return { reason, from, factor, months: from };
  // A cap never turns a step round.
  return { reason, from, factor, months: factor > 1 ? Math.max(from, capped) : Math.min(from, capped) };
}

function reasonOf(
  { asFound, partOfTolerance, months, days }: EndedInterval,
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
