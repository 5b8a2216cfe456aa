import { daysBetween } from "../analysis/years/day-number.ts";
import type { Register, RegisterRow, RegisterStandard } from "../record/register-form.ts";

/** A loop with a date. */
export type DueLoop = RegisterRow & { due: { on: string; days: number } };

export type DueList = {
  loops: readonly DueLoop[];
  standards: readonly (RegisterStandard & { days: number })[];
};

/** Loops and standards that are overdue or due within so many days, the earliest first. */
export function dueList({ rows, standards, on }: Register, withinDays: number): DueList {
  return {
    loops: rows
      .filter(hasDate)
      .filter(({ due }) => due.days <= withinDays)
      .sort((one, other) => one.due.days - other.due.days),
    standards: standards
      .map((standard) => ({ ...standard, days: daysBetween(on, standard.dueOn) }))
      .filter(({ days }) => days <= withinDays),
  };
}

function hasDate(row: RegisterRow): row is DueLoop {
  return row.due.on !== null && row.due.days !== null;
}
