import { columnName } from "../model/column-name.ts";
import { tableColumns } from "../model/table-columns.ts";
import type { TableName } from "../model/table-names.ts";
import { ProblemList } from "../problems/problem-list.ts";
import type { DecimalMark } from "../units/read-number.ts";
import type { RawTable } from "./files/raw-table.ts";
import { readRows } from "./read-rows.ts";

/** Texts of one row by the names of its columns, and where it stands. */
export type TextRow = { cells: Readonly<Record<string, string>>; line: number };

/** A table as text: the names of its columns, and each row's cells in their order. */
export type TextTable<Name extends TableName = TableName> = {
  table: Name;
  columns: readonly string[];
  rows: readonly (readonly string[])[];
};

/** A mark before a digit, where no letter stands before it. */
const decimalMark = /(?<![^\s\d+\-\u2212±])[.,](?=\d)/gu;
/** Words of an item that somebody looked at are left as they are. */
const plainNumber = /^[+\-\u2212]?\d*[.,]\d+(?:\s*[^\d\s.,]+)?$/u;

/**
 * Every row of a table as text, whatever is wrong with it: units of the header behind its numbers, words as they are
 * meant, numbers with one decimal mark.
 *
 * @param raw table as text
 * @param mark that the numbers get
 * @returns cells that are not empty; those of columns that are not known keep their names
 * Source: own choice.
 * @example textRows(rawReadings, "point")[0].cells.signal // "12.02"
 */
export function textRows(raw: RawTable, mark: DecimalMark): readonly TextRow[] {
  if (raw.header.length === 0) return [];
  const { rows } = readRows(raw, () => undefined, true, new ProblemList());
  const words = new Set(tableColumns(raw.table).flatMap(({ key, reads }) => (reads === "choice" ? [key] : [])));
  return rows.map(({ cells, row, line }) => {
    const meant = Object.entries(row).flatMap(([key, value]) =>
      words.has(key) && typeof value === "string" ? [[columnName(key), value] as const] : [],
    );
    return { line, cells: remarkedCells(raw.table, { ...cells, ...Object.fromEntries(meant) }, mark) };
  });
}

/** One row's texts, trimmed, with one decimal mark in its numbers. */
export function remarkedCells(table: TableName, cells: TextRow["cells"], mark: DecimalMark): TextRow["cells"] {
  const columns = Object.keys(cells);
  const typed = { table, columns, rows: [columns.map((name) => (cells[name] ?? "").trim())] };
  const [texts = []] = remarkedTable(typed, mark).rows;
  return Object.fromEntries(columns.map((name, place) => [name, texts[place] ?? ""]));
}

/**
 * A table with one decimal mark in its numbers, and its words as they are.
 *
 * @param table as text
 * @param mark that its numbers get
 * @returns the table with it
 * Source: own choice.
 * @example remarkedTable({ table: "readings", columns: ["signal"], rows: [["12,02"]] }, "point").rows[0][0] // "12.02"
 */
export function remarkedTable<Name extends TableName>(table: TextTable<Name>, mark: DecimalMark): TextTable<Name> {
  const reads = new Map(tableColumns(table.table).map((column) => [column.name, column.reads]));
  const isNumber = (text: string, column = "") =>
    reads.get(column) === "number" || (reads.get(column) === "numberOrWords" && plainNumber.test(text));
  return {
    ...table,
    rows: table.rows.map((row) =>
      row.map((text, place) => (isNumber(text, table.columns[place]) ? remarked(text, mark) : text)),
    ),
  };
}

/**
 * A number as a file with one decimal mark has it: point and comma are both understood where they are typed.
 *
 * @param text of a cell, a unit or words of a tolerance may stand behind the number
 * @param mark of the file
 * @returns the text with that mark in its numbers
 * Source: own choice; thousands are never set apart by either.
 * @example remarked("12,02 mA", "point") // "12.02 mA"
 */
export function remarked(text: string, mark: DecimalMark): string {
  return text.replace(decimalMark, mark === "comma" ? "," : ".");
}
