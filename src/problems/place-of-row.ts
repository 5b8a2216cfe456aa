import type { Place } from "./problem.ts";

/** The sheet of a spreadsheet that a table stands on, and the letters of its columns by the names of the columns. */
export type SheetOfTable = { name: string; letters: Readonly<Record<string, string>> };

type RowPlace = { file: string; line: number; sheet?: SheetOfTable | undefined };

/** The place of a row, or of its cell under one name: in a spreadsheet with the sheet and the cell, such as C14. */
export function placeOfRow({ file, line, sheet }: RowPlace, column?: string): Place {
  const inColumn = column !== undefined && { column };
  if (sheet === undefined) return { file, line, ...inColumn };
  const letters = column === undefined || !Object.hasOwn(sheet.letters, column) ? "" : (sheet.letters[column] ?? "");
  return { file, sheet: sheet.name, line, ...inColumn, ...(letters !== "" && { cell: `${letters}${line}` }) };
}
