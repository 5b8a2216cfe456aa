import { daysBetween } from "../analysis/years/day-number.ts";
import { isInTolerance } from "../record/phase-statement.ts";
import type { RegisterRow } from "../record/register-form.ts";
import type { IndexEntry } from "./index-entry.ts";
import type { TagLife } from "./tag-lives.ts";

/**
 * How a loop stands on a day by its last record: a date counts only where somebody agreed to the interval, and what was
 * not proved stays open until another record proves it.
 */
export function dueState(
  { summary, intervalAgreedBy }: IndexEntry,
  on: string,
  soonDays: number,
  { outOfUse, exchangedOn }: TagLife = {},
): RegisterRow["due"] {
  const { nextDue } = summary;
  const without = { on: null, days: null };
  if (outOfUse) return { state: "out of use", ...without, why: `since ${outOfUse.since}: ${outOfUse.why}` };
  if (exchangedOn) {
    return { state: "not complete", ...without, why: `another sensor was put there on ${exchangedOn}; calibrate it` };
  }
  if (nextDue !== null) {
    const days = daysBetween(on, nextDue);
    return { state: days < 0 ? "overdue" : days <= soonDays ? "due soon" : "not due", on: nextDue, days, why: null };
  }
  const { word, missing = [] } = summary.overall ?? {};
  if (word === "not complete") return { state: "not complete", ...without, why: missing.join("; ") };
  const last = (summary.asLeft ?? summary.asFound)?.statement ?? null;
  const isProved = word === undefined ? isInTolerance(last) : word === "pass" || word === "conditional pass";
  if (!isProved)
    return { state: "not in tolerance", ...without, why: ["not left in tolerance", ...missing].join("; ") };
  const why = intervalAgreedBy === undefined ? "nobody agreed to an interval" : "no interval is stated";
  return { state: "no date", on: null, days: null, why };
}
