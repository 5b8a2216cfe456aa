import { unzipSync, zipSync } from "fflate";
import { tableNames } from "../model/table-names.ts";
import { ProblemList } from "../problems/problem-list.ts";
import type { RawTable, SourceFile } from "../workbook/files/raw-table.ts";
import { readDelimited } from "../workbook/files/read-delimited.ts";
import { mergeRows, type PlacedRow } from "../workbook/merge-rows.ts";
import { remarkedCells, type TextTable, textRows } from "../workbook/text-rows.ts";
import { type Cells, type PlannedRow, type SheetData, type TypedTableName, typedTables } from "./sheet-data.ts";
import { type Change, changed, type Entries, freshId, withRow } from "./state/entries.ts";
import { csvText, rowsOf } from "./state/entry-tables.ts";

/**
 * The tables of a sheet in one file, which unpacked is a workbook.
 *
 * @param tables of the sheet
 * @param mark decimal mark of the texts
 * @returns bytes of a .zip
 * Source: PKWARE APPNOTE, through fflate.
 */
export function packed(tables: readonly TextTable[], mark: SheetData["mark"]): Uint8Array<ArrayBuffer> {
  const encoder = new TextEncoder();
  const files = tables.map((table) => [`${table.table}.csv`, encoder.encode(csvText(table, mark))] as const);
  // A day of its own in every file would make two packages of the same tables differ.
  return zipSync(Object.fromEntries(files), { mtime: new Date(2000, 0, 1) }) as Uint8Array<ArrayBuffer>;
}

/** What a file that was taken in brought: new texts, rows that are here already, rows that say something else. */
export type TakenIn = { entries: Entries; taken: number; same: number; refused: readonly string[] };

/**
 * Takes in tables that were typed elsewhere; what stands here already is never written over.
 *
 * @param data of the sheet
 * @param entries so far
 * @param file its name and bytes: a .csv with the name of a table, or a .zip with some
 * @param at the moment
 * @returns entries with what was new, and what was not taken and why
 * Source: own choice.
 */
export function takenIn(
  data: SheetData,
  entries: Entries,
  file: { name: string; bytes: Uint8Array },
  at: string,
): TakenIn {
  const so: TakenIn = { entries, taken: 0, same: 0, refused: [] };
  const files = /\.zip$/iu.test(file.name) ? unpacked(file.bytes) : [file];
  if (files === undefined) return refused(so, `${file.name}: it cannot be unpacked`);
  return files.reduce((before, one) => tableTakenIn(data, before, one, at), so);
}

function refused(so: TakenIn, ...why: readonly string[]): TakenIn {
  return { ...so, refused: [...so.refused, ...why] };
}

/** Nothing that a sheet handed back is larger, and a larger one is no table. */
const greatestFile = 16_000_000;

function unpacked(bytes: Uint8Array): readonly SourceFile[] | undefined {
  try {
    const files = unzipSync(bytes, { filter: ({ originalSize }) => originalSize < greatestFile });
    return Object.entries(files).map(([name, content]) => ({ name, bytes: content }));
  } catch {
    return undefined;
  }
}

function tableTakenIn(data: SheetData, so: TakenIn, { name, bytes }: SourceFile, at: string): TakenIn {
  const table = tableNames.find((one) => name.toLowerCase() === `${one}.csv`);
  const typed = typedTables.find((one) => one === table);
  if (table === undefined) return refused(so, `${name}: no table is called so`);
  if (typed === undefined) return so;
  const rows = comingRows(readDelimited({ name, bytes }, typed, new ProblemList()), name);
  const [own, others] = [rows.filter(isOwn), rows.filter((row) => !isOwn(row))];
  const there = rowsOf(data, so.entries, typed);
  const merged = mergeRows(
    typed,
    there.map((row) => ({ cells: pointCells(so.entries, row), place: "here" })),
    own,
  );
  const filled = [...merged.filled].flatMap(([index, cells]) => changesOf(there[index] as PlannedRow, cells, at));
  const added = merged.added.reduce((before, row) => withCells(before, typed, row.cells, at), so.entries);
  return refused(
    {
      ...so,
      entries: changed(added, filled),
      taken: so.taken + merged.added.length + merged.filled.size,
      same: so.same + merged.same,
    },
    ...others.map(({ cells, place }) => `${place}: belongs to the calibration ${cells.calibration ?? ""}`),
    ...merged.refused.map(
      ({ place, column, read, kept }) => `${place}: ${column} is ${read} there and ${kept} here, which is kept`,
    ),
  );

  function isOwn({ cells }: PlacedRow): boolean {
    return cells.calibration === data.calibration;
  }
}

/** What was typed where goes with the rows that are handed back; here it is typed anew. */
function comingRows(raw: RawTable, file: string): readonly PlacedRow[] {
  return textRows(raw, "point").map(({ cells, line }) => ({
    cells: Object.fromEntries(Object.entries(cells).filter(([name]) => !name.startsWith("typed_"))),
    place: `${file}:${line}`,
  }));
}

function pointCells(entries: Entries, row: PlannedRow): Cells {
  return remarkedCells(row.table, { ...row.cells, ...entries.cells[row.id] }, "point");
}

function withCells(entries: Entries, table: TypedTableName, cells: Cells, at: string): Entries {
  const row = { id: freshId(entries, table), table, cells: {} };
  return changed(withRow(entries, row), changesOf(row, cells, at));
}

function changesOf(row: PlannedRow, cells: Cells, at: string): readonly Change[] {
  return Object.entries(cells).map(([column, after]) => ({ at, row: row.id, column, before: "", after }));
}
