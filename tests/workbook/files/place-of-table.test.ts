import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { placeOfCell, placeOfTable, sheetBehind, sheetOfTable } from "../../../src/workbook/files/place-of-table.ts";
import { tableOfRows } from "../../../src/workbook/files/table-of-rows.ts";

const header = { line: 3, cells: ["Reference (mm)", "", "signal", "signal", "toString", "note"] };
const origin = { table: "readings", file: "book.xlsx", name: "book.xlsx", encoding: "xlsx", delimiter: null } as const;
const letters = ["A", "B", "C", "D", "E", "F"];
const table = tableOfRows({ ...origin, sheet: { name: "Readings", letters }, header, rows: [] }, new ProblemList());

test("a table of a sheet is named with it, and its cells by their letters", () => {
  expect(placeOfTable({ file: "readings.csv" }, 2)).toEqual({ file: "readings.csv", line: 2 });
  expect(placeOfTable(table)).toEqual({ file: "book.xlsx", sheet: "Readings" });
  expect(placeOfCell(table, 4, 1, undefined)).toEqual({ file: "book.xlsx", sheet: "Readings", line: 4, cell: "B4" });
  expect(placeOfCell(table, 4, 9, "x")).toEqual({ file: "book.xlsx", sheet: "Readings", line: 4, column: "x" });
});

test("letters go by the names of the columns, the first of two, and columns put before stand on no sheet", () => {
  expect(sheetOfTable(table)).toEqual({ name: "Readings", letters: { reference: "A", signal: "C", note: "F" } });
  const behind = { ...table, ...sheetBehind(["direction"], table), header: ["direction", ...table.header] };
  expect(sheetOfTable(behind)).toEqual(sheetOfTable(table));
  expect(sheetBehind(["direction"], {})).toEqual({});
});
