import { type Cell, type CellValue, type WriteSheet, writeXlsx } from "hucre/xlsx";

/** The bytes of an .xlsx file with one sheet: a text as .csv with commas, numbers as numbers, and single cells by "row,column". */
export async function spreadsheet(
  name: string,
  text: string,
  cells: Readonly<Record<string, Partial<Cell>>> = {},
  more: Partial<WriteSheet> = {},
) {
  const rows = text
    .trimEnd()
    .split("\n")
    .map((line) => line.split(",").map(cellValue));
  return spreadsheetOfRows({ [name]: rows }, cells, more);
}

export function spreadsheetOfRows(
  sheets: Readonly<Record<string, readonly (readonly CellValue[])[]>>,
  cells: Readonly<Record<string, Partial<Cell>>> = {},
  more: Partial<WriteSheet> = {},
  dateSystem: "1900" | "1904" = "1900",
): Promise<Uint8Array> {
  return writeXlsx({
    dateSystem,
    sheets: Object.entries(sheets).map(([name, rows]) => ({
      name,
      rows: rows.map((row) => [...row]),
      cells: new Map(Object.entries(cells)),
      ...more,
    })),
  });
}

function cellValue(text: string): CellValue {
  if (text === "") return null;
  return Number.isNaN(Number(text)) ? text : Number(text);
}
