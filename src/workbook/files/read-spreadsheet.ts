import type { Cell, CellValue, Sheet } from "hucre/xlsx";
import type { TableName } from "../../model/tables.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { headerColumns } from "../header-columns.ts";
import type { RawRow, RawTable, SourceFile } from "./raw-table.ts";
import { dateText, numberText } from "./spreadsheet-text.ts";
import { tableNamed } from "./table-named.ts";
import { tableOfRows } from "./table-of-rows.ts";

/** One sheet as a table, or the name of a sheet that is none. */
export type ReadSheet = { table: RawTable } | { unknownSheet: string };

/** The sheets of an .xlsx file that hold anything. The library that reads them is loaded here and nowhere else. */
export async function readSpreadsheet(file: SourceFile, problems: ProblemList): Promise<readonly ReadSheet[]> {
  const { readXlsx } = await import("hucre/xlsx");
  let sheets: readonly Sheet[];
  try {
    sheets = (await readXlsx(file.bytes, { readStyles: true })).sheets;
  } catch {
    problems.add("tables/spreadsheet", { file: file.name });
    return [];
  }
  return sheets.flatMap((sheet): readonly ReadSheet[] => {
    const table = tableNamed(sheet.name);
    if (table !== undefined) return [{ table: sheetTable(sheet, table, file.name, problems) }];
    return sheet.rows.some((row) => row.some((cell) => cell !== null)) ? [{ unknownSheet: sheet.name }] : [];
  });
}

/** Where a sheet stands, as a user would say it. */
export function sheetPlace(file: string, sheet: string): string {
  return `${file} (sheet ${sheet})`;
}

function sheetTable(sheet: Sheet, table: TableName, name: string, problems: ProblemList): RawTable {
  const file = sheetPlace(name, sheet.name);
  const rows = sheet.rows.flatMap((values, index): RawRow[] => {
    const cells = values.map((value, column) => cellText(value, sheet.cells?.get(`${index},${column}`)));
    const line = index + 1;
    return cells.some((cell) => cell.trim() !== "") ? [{ line, cells }] : [];
  });
  reportUncalculated(sheet, rows[0], { table, file }, problems);
  return tableOfRows({ table, file, name, encoding: "xlsx", delimiter: null, rows }, problems);
}

function cellText(value: CellValue, cell: Cell | undefined): string {
  if (value === null) return "";
  if (typeof value === "number") return numberText(value, cell?.style?.numFmt);
  return value instanceof Date ? dateText(value) : String(value);
}

function reportUncalculated(
  sheet: Sheet,
  header: RawRow | undefined,
  { table, file }: { table: TableName; file: string },
  problems: ProblemList,
): void {
  const columns = headerColumns(table, header?.cells ?? []);
  for (const [place, cell] of sheet.cells ?? []) {
    if (cell.formula === undefined || cell.value !== null) continue;
    const [row = 0, index = 0] = place.split(",").map(Number);
    const column = columns[index]?.name;
    const read = `=${cell.formula}`;
    problems.add(
      "tables/formula-uncalculated",
      { file, line: row + 1, ...(column !== undefined && { column }) },
      { read },
    );
  }
}
