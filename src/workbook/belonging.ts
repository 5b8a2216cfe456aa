import type { TableName } from "../model/tables.ts";
import type { Belonging } from "../problems/problem.ts";

/** The columns by which the rows of a table are told apart, or by which they say what they belong to; owner first. */
export const nameColumns = {
  instruments: ["tag"],
  outputs: ["tag", "output"],
  standards: ["standard"],
  calibrations: ["calibration"],
  readings: ["calibration"],
  trips: ["calibration"],
  loop_checks: ["calibration"],
  candidates: ["candidate"],
} as const satisfies Record<TableName, readonly [string, ...string[]]>;

/** What a row belongs to, by the name written in it; nothing for candidates, and where the name is missing. */
export function belongingOf(table: TableName, cells: Readonly<Record<string, string>>): Belonging | undefined {
  const [column] = nameColumns[table];
  const name = cells[column];
  if (name === undefined || column === "candidate") return undefined;
  if (column === "tag") return { tag: name };
  return column === "standard" ? { standard: name } : { calibration: name };
}
