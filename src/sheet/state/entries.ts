import type { Cells, PlannedRow, TypedTableName } from "../sheet-data.ts";

/** One cell that was left with another text than before: what was typed is kept, also when it is typed again. */
export type Change = { at: string; row: string; column: string; before: string; after: string };

/** Everything that was typed into a sheet, and how it came about. */
export type Entries = {
  cells: Readonly<Record<string, Cells>>;
  /** Rows that the technician added to the planned ones. */
  added: readonly PlannedRow[];
  /** Every change, oldest first; taking one back is a change too. */
  log: readonly Change[];
  /** Changes that can be taken back: each list is taken back at once. */
  undo: readonly (readonly Change[])[];
};

export const noEntries: Entries = Object.freeze({ cells: {}, added: [], log: [], undo: [] });

/** The text of a cell as it was typed, or as it was planned. */
export function textAt({ cells }: Entries, row: PlannedRow, column: string): string {
  return cells[row.id]?.[column] ?? row.cells[column] ?? "";
}

/**
 * What stands in a field while it is typed: kept at once, and no change yet.
 *
 * @param entries so far
 * @param row id of the row
 * @param column name of the column
 * @param text as it stands in the field
 * @returns entries with it
 * Source: own choice.
 */
export function typing(entries: Entries, row: string, column: string, text: string): Entries {
  return { ...entries, cells: { ...entries.cells, [row]: { ...entries.cells[row], [column]: text } } };
}

/**
 * What was typed, as one step that can be taken back.
 *
 * @param entries so far
 * @param changes cells with their texts before and after
 * @returns entries with the texts, the changes in the log
 * Source: ISO/IEC 17025:2017, 7.5.2: original observations are kept when they are amended.
 */
export function changed(entries: Entries, changes: readonly Change[]): Entries {
  const real = changes.filter(({ before, after }) => before !== after);
  if (real.length === 0) return entries;
  const typed = written(entries, real);
  return { ...typed, log: [...entries.log, ...real], undo: [...entries.undo, real] };
}

/**
 * The last step taken back; the log says that, too.
 *
 * @param entries so far
 * @param at the moment in words
 * @returns entries as before that step, but for the log
 * Source: own choice.
 */
export function undone(entries: Entries, at: string): Entries {
  const last = entries.undo.at(-1);
  if (last === undefined) return entries;
  const back = last.map(({ row, column, before, after }) => ({ at, row, column, before: after, after: before }));
  return { ...written(entries, back), log: [...entries.log, ...back], undo: entries.undo.slice(0, -1) };
}

/** A row that the technician adds, last of its table. */
export function withRow(entries: Entries, row: PlannedRow): Entries {
  return { ...entries, added: [...entries.added, row] };
}

/** An added row taken out again; what was typed into it stays in the log. */
export function withoutRow(entries: Entries, id: string): Entries {
  const { [id]: _, ...cells } = entries.cells;
  return { ...entries, cells, added: entries.added.filter((row) => row.id !== id) };
}

/** An id that no other row has. */
export function freshId({ added, log }: Entries, table: TypedTableName): string {
  return `${table}+${added.length + log.length + 1}`;
}

function written(entries: Entries, changes: readonly Change[]): Entries {
  return changes.reduce((one, { row, column, after }) => typing(one, row, column, after), entries);
}
