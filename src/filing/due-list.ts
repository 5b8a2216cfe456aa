import { daysBetween } from "../analysis/years/day-number.ts";
import type { RegisterStandard } from "../record/register-form.ts";
import type { DueRow, Dues } from "./make-dues.ts";

/** A loop with a date. */
export type DueLoop = DueRow & { due: { on: string; days: number } };

export type DueList = {
  /** Without a day: not left in tolerance, or not proved to be; open until another record closes it. */
  open: readonly DueRow[];
  loops: readonly DueLoop[];
  standards: readonly (RegisterStandard & { days: number })[];
};

/** Loops that are open; loops and standards that are overdue or due within so many days, the earliest first. */
export function dueList({ rows, standards, on }: Dues, withinDays: number): DueList {
  return {
    open: rows.filter(({ due }) => due.state === "not in tolerance" || due.state === "not complete"),
    loops: rows
      .filter(hasDate)
      .filter(({ due }) => due.days <= withinDays)
      .sort((one, other) => one.due.days - other.due.days),
    standards: standards
      .map((standard) => ({ ...standard, days: daysBetween(on, standard.dueOn) }))
      .filter(({ days }) => days <= withinDays),
  };
}

function hasDate(row: DueRow): row is DueLoop {
  return row.due.on !== null && row.due.days !== null;
}
