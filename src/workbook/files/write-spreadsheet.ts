import type { Cell, DataValidation, WriteSheet } from "hucre/xlsx";
import type { Column } from "../../model/column.ts";
import { columnLetters } from "../../units/column-letters.ts";
import { columnNote, fixedWords, takesSeveral } from "./column-note.ts";

/** A cell as it is written: a number stays one. */
export type WrittenCell = string | number;

/** A table to be written: its columns, and the rows below its header. */
export type WrittenTable = {
  name: string;
  columns: readonly Column[];
  rows: readonly (readonly WrittenCell[])[];
};

/** One fixed moment, so that the same tables are the same bytes. */
const moment = new Date(Date.UTC(2026, 0, 1));

/** Choice lists reach to this row; a table that is longer is read all the same. */
const lastChoiceRow = 5001;

/**
 * Tables as the sheets of an .xlsx file for somebody to fill in: each header has a note that says what the column means
 * and takes, stays in sight, and is bold where it is needed; fixed words are chosen from a list. The library that writes
 * them is loaded here.
 */
export async function writeSpreadsheet(tables: readonly WrittenTable[]): Promise<Uint8Array> {
  const { writeXlsx } = await import("hucre/xlsx");
  return writeXlsx({
    sheets: tables.map(sheetOf),
    properties: { creator: "spanwright", created: moment, modified: moment },
  });
}

function sheetOf({ name, columns, rows }: WrittenTable): WriteSheet {
  return {
    name,
    rows: [columns.map((column) => column.name), ...rows.map((row) => [...row])],
    cells: new Map(columns.map((column, index) => [`0,${index}`, headerCell(column)])),
    columns: columns.map((column) => ({ width: Math.max(11, column.name.length + 3) })),
    dataValidations: columns.flatMap(choiceList),
    freezePane: { rows: 1 },
  };
}

function headerCell(column: Column): Partial<Cell> {
  return {
    value: column.name,
    type: "string",
    style: { font: { bold: column.required } },
    comment: { author: "spanwright", text: columnNote(column) },
  };
}

/** Where a cell may hold several words, or a word in another spelling, the list offers and does not insist. */
function choiceList(column: Column, index: number): readonly DataValidation[] {
  const values = fixedWords(column);
  if (values === undefined) return [];
  const letters = columnLetters(index);
  const insists = !takesSeveral(column) && column.reads !== "unit";
  return [
    {
      type: "list",
      values: [...values],
      allowBlank: true,
      range: `${letters}2:${letters}${lastChoiceRow}`,
      showErrorMessage: insists,
      errorTitle: column.name,
      errorMessage: `One of ${values.join(", ")}`.slice(0, 250),
    },
  ];
}
