import { type FleetRow, fleetColumns, type StandardCell } from "../../src/fleet/fleet-columns.ts";

const principles = ["ultrasonic", "laser", "radar", "inductive", null] as const;
const statements = ["pass", "pass", "pass", "conditional pass", "conditional fail", "fail", "cannot be decided"];
const years = Array.from({ length: 10 }, (_, index) => 2016 + index);

/** Numbers from 0 to 1, always the same: a linear congruential generator modulo 2³² (Numerical Recipes, 3rd ed., 7.1). */
function chance(): () => number {
  let state = 20_261_127;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const nothing = Object.fromEntries(fleetColumns.map(({ name }) => [name, null])) as FleetRow;

/** Rows of invented loops, one a year over ten years; now and then a superseded revision, or something not stated. */
export function madeUpRows(count: number): readonly FleetRow[] {
  const next = chance();
  return Array.from({ length: count }, (_, index) => madeUpRow(index, Math.ceil(count / years.length), next));
}

function madeUpRow(index: number, loops: number, next: () => number): FleetRow {
  const below = (limit: number) => Math.floor(next() * limit);
  const loop = index % loops;
  const year = years[Math.floor(index / loops)] as number;
  const isCurrent = next() > 0.03;
  const isLast = isCurrent && year === years.at(-1);
  const figures = fleetColumns.filter(({ name, kind }) => kind === "number" && /^as_(?:found|left)_/u.test(name));
  const hasDay = next() > 0.02;
  return {
    ...nothing,
    ...Object.fromEntries(figures.map(({ name }) => [name, next() < 0.1 ? null : 2 * next() - 1])),
    ...{ tag: `XT-${loop}`, calibration: `C-${year}-${loop}`, revision: 1, is_current: isCurrent, is_last: isLast },
    performed_on: next() > 0.01 ? dayOf(year, below(12), below(28)) : null,
    ...{ path: `XT-${loop}/${year}.html`, file_sha256: hexOf(next), seal_sha256: hexOf(next) },
    ...{ location: next() < 0.1 ? null : `Hall ${below(40)}; "east", Ω`, principle: principles[loop % 5] ?? null },
    next_due_on: hasDay ? dayOf(year + 1, below(12), below(28)) : null,
    no_due_day: hasDay ? null : "no date",
    drift_percent_span_per_year: next() < 0.2 ? null : 0.4 * next() - 0.2,
    drift_is_early: next() < 0.2,
    ...{ forecast_on: next() < 0.5 ? null : dayOf(2027 + below(9), below(12), below(28)), forecast_limit: "upper" },
    as_found_statement: next() < 0.05 ? null : (statements[below(statements.length)] ?? null),
    standards: Array.from({ length: below(4) }, () => standardOf(year, below)),
    missing: next() < 0.1 ? ["nobody signed it"] : [],
    signed_by: ["on paper: binder 7"],
  };
}

/** Its certificate runs until a day of the year of the work or of the one after. */
function standardOf(year: number, below: (limit: number) => number): StandardCell {
  const number = below(40);
  const until = year + below(2);
  return { standard: `METER-${number}`, certificate: `K-${until}-${number}`, due_on: dayOf(until, number % 12, 14) };
}

function dayOf(year: number, month: number, day: number): string {
  return [year, month + 1, day + 1].map((part) => String(part).padStart(2, "0")).join("-");
}

function hexOf(next: () => number): string {
  return Array.from({ length: 8 }, () =>
    Math.floor(next() * 2 ** 32)
      .toString(16)
      .padStart(8, "0"),
  ).join("");
}
