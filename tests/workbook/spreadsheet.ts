import { type Cell, type CellValue, writeXlsx } from "hucre/xlsx";

/** The bytes of an .xlsx file with one sheet: a text as .csv with commas, numbers as numbers, and single cells by "row,column". */
export async function spreadsheet(name: string, text: string, cells: Readonly<Record<string, Partial<Cell>>> = {}) {
  const rows = text
    .trimEnd()
    .split("\n")
    .map((line) => line.split(",").map(cellValue));
  return spreadsheetOfRows({ [name]: rows }, cells);
}

export function spreadsheetOfRows(
  sheets: Readonly<Record<string, readonly (readonly CellValue[])[]>>,
  cells: Readonly<Record<string, Partial<Cell>>> = {},
): Promise<Uint8Array> {
  return writeXlsx({
    sheets: Object.entries(sheets).map(([name, rows]) => ({
      name,
      rows: rows.map((row) => [...row]),
      cells: new Map(Object.entries(cells)),
    })),
  });
}

function cellValue(text: string): CellValue {
  if (text === "") return null;
  return Number.isNaN(Number(text)) ? text : Number(text);
}
