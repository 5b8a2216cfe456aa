import { unzipSync, zipSync } from "fflate";
import { tableNames } from "../model/tables.ts";
import { ProblemList } from "../problems/problem-list.ts";
import { readDelimited } from "../workbook/files/read-delimited.ts";

import { remarked, type TextTable, textRows } from "../workbook/text-rows.ts";
import { type Cells, type PlannedRow, type SheetData, type TypedTableName, typedTables } from "./sheet-data.ts";
import { changed, type Entries, freshId, textAt, withRow } from "./state/entries.ts";
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
  const files = /\.zip$/iu.test(file.name) ? unpacked(file.bytes) : [file];
  let so: TakenIn = { entries, taken: 0, same: 0, refused: [] };
  for (const { name, bytes } of files) {
    const table = tableNames.find((one) => name.toLowerCase() === `${one}.csv`);
    const typed = typedTables.find((one) => one === table);
    if (table === undefined) so = refused(so, `${name}: no table is called so`);
    if (typed === undefined) continue;
    const raw = readDelimited({ name, bytes }, typed, new ProblemList());
    for (const { cells, line } of textRows(raw, "point")) {
      so = rowTakenIn(data, so, { typed, cells, place: `${name}:${line}` }, at);
    }
  }
  return so;
}

function refused(so: TakenIn, why: string): TakenIn {
  return { ...so, refused: [...so.refused, why] };
}

function unpacked(bytes: Uint8Array): readonly { name: string; bytes: Uint8Array }[] {
  try {
    const files = unzipSync(bytes, { filter: ({ originalSize }) => originalSize < greatestFile });
    return Object.entries(files).map(([name, content]) => ({ name, bytes: content }));
  } catch {
    return [{ name: "the .zip file, which cannot be unpacked", bytes: new Uint8Array() }];
  }
}

const greatestFile = 16_000_000;

/** Columns that say which row is meant. */
const keyColumns: Readonly<Record<TypedTableName, readonly string[]>> = {
  calibrations: ["calibration"],
  readings: ["phase", "cycle", "direction"],
  trips: ["phase", "output", "direction", "cycle"],
  loop_checks: ["item"],
};

type TypedRow = { typed: TypedTableName; cells: Cells; place: string };

function rowTakenIn(data: SheetData, so: TakenIn, { typed, cells, place }: TypedRow, at: string): TakenIn {
  if (cells.calibration !== data.calibration) {
    return refused(so, `${place}: belongs to the calibration ${cells.calibration ?? ""}`);
  }
  const there = rowsOf(data, so.entries, typed).find((row) => isMeant(so.entries, row, typed, cells));
  const row = there ?? { id: freshId(so.entries, typed), table: typed, cells: keyCells(typed, cells, data) };
  const told = Object.entries(cells).filter(([name]) => !name.startsWith("typed_"));
  const other = told.filter(([name, text]) => {
    const here = textAt(so.entries, row, name).trim();
    return here !== "" && remarked(here, "point") !== remarked(text, "point");
  });
  const [first] = other;
  if (first !== undefined) {
    const says = `${place}: ${first[0]} is ${first[1]} there and ${textAt(so.entries, row, first[0])} here, which is kept`;
    return refused(so, says);
  }
  const fresh = told.filter(([name]) => textAt(so.entries, row, name).trim() === "");
  if (fresh.length === 0) return { ...so, same: so.same + 1 };
  const withIt = there === undefined ? withRow(so.entries, row) : so.entries;
  const changes = fresh.map(([column, after]) => ({ at, row: row.id, column, before: "", after }));
  return { ...so, entries: changed(withIt, changes), taken: so.taken + 1 };
}

function isMeant(entries: Entries, row: PlannedRow, typed: TypedTableName, cells: Cells): boolean {
  const here = (column: string) => textAt(entries, row, column).trim();
  if (!keyColumns[typed].every((column) => here(column) === (cells[column] ?? ""))) return false;
  const placeOf = (point: string, reference: string) => remarked(point === "" ? reference : point, "point");
  return (
    typed !== "readings" ||
    placeOf(here("point"), here("reference")) === placeOf(cells.point ?? "", cells.reference ?? "")
  );
}

function keyCells(typed: TypedTableName, cells: Cells, { calibration }: SheetData): Cells {
  const keys = keyColumns[typed].flatMap((column) => (cells[column] === undefined ? [] : [[column, cells[column]]]));
  return { calibration, ...Object.fromEntries(keys) };
}
