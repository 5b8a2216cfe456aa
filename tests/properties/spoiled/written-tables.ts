import type { Texts } from "../../workbook/smallest-workbook.ts";
import type { Cells, Tables } from "./made-workbook.ts";

/** How the files of a workbook are written: what parts the cells, and the decimal mark. */
export type Writing = { delimiter: "," | ";" | "\t"; mark: "." | "," };

/** A table as a list of lines of cells: header first. */
export type Grid = readonly (readonly string[])[];

export function gridOf(rows: readonly Cells[]): Grid {
  const names = Object.keys(rows[0] ?? {});
  return [names, ...rows.map((row) => names.map((name) => row[name] ?? ""))];
}

const plainNumber = /^-?\d+\.\d+$/u;

/** The numbers of a table with the mark of its file. */
export function marked(grid: Grid, mark: Writing["mark"]): Grid {
  return mark === "."
    ? grid
    : grid.map((cells) => cells.map((cell) => (plainNumber.test(cell) ? cell.replace(".", ",") : cell)));
}

/** Lines of text; a cell that holds what parts cells stands in quotation marks, but for those that forget them. */
export function textOf(grid: Grid, delimiter: string, isQuoted = true): string {
  const quoted = (cell: string) =>
    isQuoted && /[",;\t\n]/u.test(cell) && cell.includes(delimiter) ? `"${cell.replaceAll('"', '""')}"` : cell;
  return grid.map((cells) => `${cells.map(quoted).join(delimiter)}\n`).join("");
}

export function filesOfTables(tables: Tables, { delimiter, mark }: Writing): Texts {
  return Object.fromEntries(
    Object.entries(tables).map(([name, rows]) => [`${name}.csv`, textOf(marked(gridOf(rows), mark), delimiter)]),
  );
}
