import type { TableName } from "../model/table-names.ts";
import { remarked, type TextRow } from "./text-rows.ts";

type Cells = TextRow["cells"];

/** Columns that say which row of a table is meant; of readings its place as well. */
const keyColumns: Readonly<Record<TableName, readonly string[]>> = Object.freeze({
  instruments: ["tag"],
  outputs: ["tag", "output"],
  standards: ["standard"],
  controller_limits: ["tag", "limit"],
  candidates: ["candidate"],
  calibrations: ["calibration"],
  readings: ["calibration", "phase", "cycle", "direction"],
  trips: ["calibration", "phase", "output", "direction", "cycle"],
  loop_checks: ["calibration", "item"],
});

/** A row that is there, or that comes; `place` says where it stands. */
export type PlacedRow = { cells: Cells; place: string };

/** What came of the rows of one table: those that are new, those that fill what was empty, and what contradicts. */
export type Merged = {
  added: readonly PlacedRow[];
  /** Rows that are there, by their index, with the cells that are filled in. */
  filled: ReadonlyMap<number, Cells>;
  same: number;
  refused: readonly Contradiction[];
};

/** A cell that says one thing in the workbook and another in what came. */
export type Contradiction = { place: string; there: string; column: string; read: string; kept: string };

/**
 * Merges rows into those of a table: never twice, and never over what is there.
 *
 * @param table whose rows they are
 * @param there rows of the workbook, numbers with a point
 * @param coming rows that came, numbers with a point
 * @returns what is new, what fills an empty cell, and every contradiction
 * Source: own choice; ISO/IEC 17025:2017, 7.5.2, for original observations that are kept.
 * @example mergeRows("readings", [], [{ cells: { calibration: "C-1", reference: "5" }, place: "a.csv:2" }]).added.length // 1
 */
export function mergeRows(table: TableName, there: readonly PlacedRow[], coming: readonly PlacedRow[]): Merged {
  const known = new Map(keyed(table, there).map(({ key, index }) => [key, index]));
  const added: PlacedRow[] = [];
  const filled = new Map<number, Cells>();
  const refused: Contradiction[] = [];
  let same = 0;
  for (const { key, index } of keyed(table, coming)) {
    const row = coming[index] as PlacedRow;
    const at = known.get(key);
    if (at === undefined) {
      added.push(row);
      continue;
    }
    const before = there[at] as PlacedRow;
    const contradictions = contradictionsOf(before, row);
    refused.push(...contradictions);
    const fresh = Object.entries(row.cells).filter(([name, text]) => text !== "" && (before.cells[name] ?? "") === "");
    if (contradictions.length === 0 && fresh.some(([name]) => !isOfTyping(name))) {
      filled.set(at, Object.fromEntries(fresh));
    } else if (contradictions.length === 0) same += 1;
  }
  return { added, filled, same, refused };
}

/** Rows of one key are told apart by their order: repeats need not be numbered. */
function keyed(table: TableName, rows: readonly PlacedRow[]): readonly { key: string; index: number }[] {
  const seen = new Map<string, number>();
  return rows.map(({ cells }, index) => {
    const key = keyOf(table, cells);
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return { key: `${key} ${times}`, index };
  });
}

function keyOf(table: TableName, cells: Cells): string {
  const own = keyColumns[table].map((column) => (cells[column] ?? "").trim());
  if (table !== "readings") return JSON.stringify(own);
  const at = Number.parseFloat(remarked(cells.point || (cells.reference ?? ""), "point"));
  return JSON.stringify([...own, Number.isNaN(at) ? (cells.reference ?? "") : at]);
}

/** When and where something was typed is no part of what was read. */
function isOfTyping(column: string): boolean {
  return column.startsWith("typed_");
}

function contradictionsOf(before: PlacedRow, row: PlacedRow): readonly Contradiction[] {
  return Object.entries(row.cells).flatMap(([column, read]) => {
    const kept = before.cells[column] ?? "";
    const isSame = kept === "" || read === "" || isOfTyping(column) || isAlike(kept, read);
    return isSame ? [] : [{ place: row.place, there: before.place, column, read, kept }];
  });
}

/** "12.0" and "12.00" are one number, but not one observation: digits that were read count. */
function isAlike(one: string, other: string): boolean {
  return one.trim() === other.trim();
}
