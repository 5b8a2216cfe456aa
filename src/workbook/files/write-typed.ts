import Papa from "papaparse";
import type { Column } from "../../model/column.ts";
import { markedText } from "./marked-text.ts";
import type { Delimiter } from "./raw-table.ts";

/** Cells as somebody typed them, a list a row in the order of the columns, and what stands between them. */
export type TypedTable = {
  columns: readonly Pick<Column, "name" | "reads">[];
  rows: readonly (readonly string[])[];
  delimiter: Delimiter;
};

/** A number with its sign, and nothing that a spreadsheet could reckon with. */
const plainNumber = /^[+\-\u2212]?[\d.,]+$/u;

/**
 * A table as the text of a .csv file that holds what was typed: a number stands as it was, with its own decimal mark, and
 * a text that a spreadsheet would take for a formula is marked as text, which the reader takes off again.
 */
export function writeTyped({ columns, rows, delimiter }: TypedTable): string {
  const header = columns.map(({ name }) => name);
  const cells = rows.map((row) =>
    row.map((cell, place) => (isNumber(columns[place]) && plainNumber.test(cell) ? cell : markedText(cell))),
  );
  return `${Papa.unparse([header, ...cells], { newline: "\r\n", delimiter })}\r\n`;
}

function isNumber(column: Pick<Column, "reads"> | undefined): boolean {
  return column?.reads === "number" || column?.reads === "numberOrWords";
}
