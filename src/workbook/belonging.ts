import type { AnyTableName } from "../model/table-names.ts";
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
  controller_limits: ["tag", "limit"],
  candidates: ["candidate"],
  signers: ["name"],
} as const satisfies Record<AnyTableName, readonly [string, ...string[]]>;

/** What a row belongs to, by the name written in it; nothing for candidates and signers, and where the name is missing. */
export function belongingOf(table: AnyTableName, cells: Readonly<Record<string, string>>): Belonging | undefined {
  const [column] = nameColumns[table];
  const name = cells[column];
  if (name === undefined || column === "candidate" || column === "name") return undefined;
  if (column === "tag") return { tag: name };
  return column === "standard" ? { standard: name } : { calibration: name };
}
