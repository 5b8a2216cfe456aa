import type { AnyTableName } from "../../model/table-names.ts";
import type { SheetOfTable } from "../../problems/place-of-row.ts";
import type { Place } from "../../problems/problem.ts";
import { visibleText } from "../../problems/visible-text.ts";
import { headerColumns } from "../header-columns.ts";
import type { RawSheet, RawTable } from "./raw-table.ts";

type TablePlace = { file: string; sheet?: RawSheet | undefined };

/** The place of a table, or of one of its rows: a file, and in a spreadsheet the sheet too. */
export function placeOfTable({ file, sheet }: TablePlace, line?: number): Place {
  return { file, ...(sheet && { sheet: sheet.name }), ...(line !== undefined && { line }) };
}

/** The place of a cell by its column in the header, from 0, and by what that column is called. */
export function placeOfCell(table: TablePlace, line: number, index: number, column: string | undefined): Place {
  const letters = table.sheet?.letters[index] ?? "";
  const inColumn = column !== undefined && { column };
  return { ...placeOfTable(table, line), ...inColumn, ...(letters !== "" && { cell: `${letters}${line}` }) };
}

/** The sheet of a table with the letters of its columns by their names, for its rows and for a record. */
export function sheetOfTable({ table, sheet, header }: RawTable<AnyTableName>): SheetOfTable | undefined {
  if (sheet === undefined) return undefined;
  const columns = headerColumns(table, header);
  const letters: Record<string, string> = {};
  for (const [index, text] of header.entries()) {
    const name = columns[index]?.name ?? visibleText(text);
    const isNameless = name === "" || name in Object.prototype;
    if (!isNameless && sheet.letters[index]) letters[name] ??= sheet.letters[index];
  }
  return { name: sheet.name, letters };
}

/** The sheet of a table before whose columns others were put, which stand on no sheet. */
export function sheetBehind(added: readonly string[], { sheet }: { sheet?: RawSheet }): { sheet?: RawSheet } {
  return sheet === undefined ? {} : { sheet: { ...sheet, letters: [...added.map(() => ""), ...sheet.letters] } };
}
