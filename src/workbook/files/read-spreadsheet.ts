import type { TableName } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { columnLetters } from "../../units/column-letters.ts";
import { TooWideSheet } from "./ods-sheet.ts";
import { odsSheets } from "./ods-sheets.ts";
import type { RawTable, SourceFile } from "./raw-table.ts";
import { mostSpannedCells, refusedSpreadsheet } from "./refused-spreadsheet.ts";
import { tellSheet } from "./sheet-problems.ts";
import type { SheetText } from "./sheet-text.ts";
import { tableNamed } from "./table-named.ts";
import { tableOfRows } from "./table-of-rows.ts";
import { xlsxSheets } from "./xlsx-sheets.ts";

/** One sheet as a table, or the name of a sheet that is none. */
export type ReadSheet = { table: RawTable } | { unknownSheet: string };

/** The sheets of an .xlsx or .ods file that hold anything. */
export async function readSpreadsheet(file: SourceFile, problems: ProblemList): Promise<readonly ReadSheet[]> {
  const sheets = await sheetsOf(file, problems);
  return sheets.flatMap((sheet): readonly ReadSheet[] => {
    const table = tableNamed(sheet.name);
    if (table !== undefined) return [{ table: sheetTable(sheet, table, file, problems) }];
    return sheet.rows.length > 0 ? [{ unknownSheet: sheet.name }] : [];
  });
}

/** The one sheet of a spreadsheet that is no workbook: the one that is called readings, or the first that holds anything. */
export async function readLoneSheet(
  file: SourceFile,
  problems: ProblemList,
): Promise<RawTable<"readings"> | undefined> {
  const sheets = (await sheetsOf(file, problems)).filter(({ rows }) => rows.length > 0);
  const named = sheets.map((sheet) => tableNamed(sheet.name));
  if (named.some((table) => table !== undefined && table !== "readings")) return undefined;
  const chosen = sheets[Math.max(0, named.indexOf("readings"))];
  if (chosen === undefined) return undefined;
  for (const other of sheets) {
    if (other === chosen) continue;
    problems.add(
      "tables/file-unknown",
      { file: file.name, sheet: other.name },
      { values: { nearest: "", tables: "one sheet of readings, or the tables of a workbook" } },
    );
  }
  return sheetTable(chosen, "readings", file, problems);
}

async function sheetsOf({ name, bytes }: SourceFile, problems: ProblemList): Promise<readonly SheetText[]> {
  const refusal = refusedSpreadsheet(bytes);
  if (refusal !== undefined) {
    problems.add(refusal.code, { file: name }, { ...(refusal.values && { values: refusal.values }) });
    return [];
  }
  try {
    return kindOf(bytes) === "ods" ? odsSheets(bytes) : await xlsxSheets(bytes);
  } catch (fault) {
    if (fault instanceof TooWideSheet) {
      const values = { corner: fault.corner, most: mostSpannedCells };
      problems.add("tables/spreadsheet-extent", { file: name, sheet: fault.sheet }, { values });
    } else problems.add("tables/spreadsheet", { file: name });
    return [];
  }
}

/** An .ods file says what it is in the first hundred bytes, not packed. */
function kindOf(bytes: Uint8Array): "ods" | "xlsx" {
  const beginning = new TextDecoder("latin1").decode(bytes.subarray(0, 100));
  return beginning.includes("application/vnd.oasis.opendocument.spreadsheet") ? "ods" : "xlsx";
}

function sheetTable<Table extends TableName>(
  sheet: SheetText,
  table: Table,
  { name, bytes }: SourceFile,
  problems: ProblemList,
): RawTable<Table> {
  const letters = (sheet.rows[0]?.cells ?? []).map((_, index) => columnLetters(index));
  const place = { table, file: name, sheet: { name: sheet.name, letters } };
  tellSheet(sheet, place, problems);
  const [header, ...rows] = sheet.rows;
  return tableOfRows({ ...place, name, encoding: kindOf(bytes), delimiter: null, header, rows }, problems);
}
