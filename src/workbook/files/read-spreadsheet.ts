import type { Cell, CellValue, Sheet } from "hucre/xlsx";
import type { Column } from "../../model/column.ts";
import type { TableName } from "../../model/tables.ts";
import { columnLetters } from "../../problems/place-of-row.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { headerColumns } from "../header-columns.ts";
import { placeOfCell } from "./place-of-table.ts";
import type { RawRow, RawSheet, RawTable, SourceFile } from "./raw-table.ts";
import { dateText, numberText } from "./spreadsheet-text.ts";
import { tableNamed } from "./table-named.ts";
import { tableOfRows } from "./table-of-rows.ts";
import { mostUnpackedBytes, unpackedSize } from "./unpacked-size.ts";

/** One sheet as a table, or the name of a sheet that is none. */
export type ReadSheet = { table: RawTable } | { unknownSheet: string };

/** The sheets of an .xlsx or .ods file that hold anything. The library that reads them is loaded here and nowhere else. */
export async function readSpreadsheet(file: SourceFile, problems: ProblemList): Promise<readonly ReadSheet[]> {
  const sheets = await sheetsOf(file, problems);
  return sheets.flatMap((sheet): readonly ReadSheet[] => {
    const table = tableNamed(sheet.name);
    if (table !== undefined) return [{ table: sheetTable(sheet, table, file, problems) }];
    return isFilled(sheet) ? [{ unknownSheet: sheet.name }] : [];
  });
}

/** The one sheet of a spreadsheet that is no workbook: the one that is called readings, or the first that holds anything. */
export async function readLoneSheet(
  file: SourceFile,
  problems: ProblemList,
): Promise<RawTable<"readings"> | undefined> {
  const sheets = (await sheetsOf(file, problems)).filter(isFilled);
  const named = sheets.map((sheet) => tableNamed(sheet.name));
  if (named.some((table) => table !== undefined && table !== "readings")) return undefined;
  const chosen = sheets[Math.max(0, named.indexOf("readings"))];
  if (chosen === undefined) return undefined;
  for (const other of sheets) {
    if (other === chosen) continue;
    problems.add(
      "tables/file-unknown",
      { file: file.name, sheet: other.name },
      { values: { tables: "one sheet of readings, or the tables of a workbook" } },
    );
  }
  return sheetTable(chosen, "readings", file, problems);
}

async function sheetsOf({ name, bytes }: SourceFile, problems: ProblemList): Promise<readonly Sheet[]> {
  if (unpackedSize(bytes) === Infinity) {
    problems.add("tables/spreadsheet-large", { file: name }, { values: { megabytes: mostUnpackedBytes / 2 ** 20 } });
    return [];
  }
  try {
    if (kindOf(bytes) === "ods") return (await (await import("hucre/ods")).readOds(bytes)).sheets;
    return (await (await import("hucre/xlsx")).readXlsx(bytes, { readStyles: true })).sheets;
  } catch {
    problems.add("tables/spreadsheet", { file: name });
    return [];
  }
}

/** An .ods file says what it is in the first hundred bytes, not packed. */
function kindOf(bytes: Uint8Array): "ods" | "xlsx" {
  const beginning = new TextDecoder("latin1").decode(bytes.subarray(0, 100));
  return beginning.includes("application/vnd.oasis.opendocument.spreadsheet") ? "ods" : "xlsx";
}

function isFilled(sheet: Sheet): boolean {
  return sheet.rows.some((row) => row.some((cell) => cell !== null && cell !== ""));
}

function sheetTable<Table extends TableName>(
  sheet: Sheet,
  table: Table,
  { name, bytes }: SourceFile,
  problems: ProblemList,
): RawTable<Table> {
  const rows = sheet.rows.flatMap((values, index): RawRow[] => {
    const cells = values.map((value, column) => cellText(value, sheet.cells?.get(`${index},${column}`)));
    const line = index + 1;
    return cells.some((cell) => cell.trim() !== "") ? [{ line, cells }] : [];
  });
  const letters = (rows[0]?.cells ?? []).map((_, index) => columnLetters(index));
  const place = { file: name, sheet: { name: sheet.name, letters } };
  reportUncalculated(sheet, headerColumns(table, rows[0]?.cells ?? []), place, problems);
  return tableOfRows({ ...place, table, name, encoding: kindOf(bytes), delimiter: null, rows }, problems);
}

function cellText(value: CellValue, cell: Cell | undefined): string {
  if (value === null) return "";
  if (typeof value === "number") return numberText(value, cell?.style?.numFmt);
  return value instanceof Date ? dateText(value) : String(value);
}

function reportUncalculated(
  sheet: Sheet,
  columns: readonly (Column | undefined)[],
  table: { file: string; sheet: RawSheet },
  problems: ProblemList,
): void {
  for (const [place, cell] of sheet.cells ?? []) {
    if (cell.formula === undefined || cell.value !== null) continue;
    const [row = 0, index = 0] = place.split(",").map(Number);
    const here = placeOfCell(table, row + 1, index, columns[index]?.name);
    problems.add("tables/formula-uncalculated", here, { read: `=${cell.formula}` });
  }
}
