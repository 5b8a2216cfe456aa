import { type TableName, tableNames } from "../model/tables.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import type { RawTable, SourceFile } from "./raw-table.ts";
import { readDelimited } from "./read-delimited.ts";
import { readSpreadsheet, sheetPlace } from "./read-spreadsheet.ts";
import { tableNamed } from "./table-named.ts";

/** Kinds of file that hold tables and that nothing here reads. */
const otherTableFiles = /\.(?:xls|xlsb|xlsm|xltx|ods|tsv|numbers)$/iu;

const acceptedTables = { tables: tableNames.join(", ") };

/**
 * Reads every table among the files of a workbook as text: a .csv file is the table that its name says, an .xlsx
 * file holds sheets of those names. Hidden files and whatever is no table (notes, pictures) are passed over.
 *
 * @returns at most one raw table a name, in the order of the files
 */
export async function readTables(files: readonly SourceFile[], problems: ProblemList): Promise<readonly RawTable[]> {
  const tables = new Map<TableName, RawTable>();
  for (const file of files) {
    for (const table of await tablesOf(file, problems)) {
      const first = tables.get(table.table);
      if (first === undefined) tables.set(table.table, table);
      else
        problems.add("tables/table-twice", { file: table.file }, { values: { table: table.table, first: first.file } });
    }
  }
  return [...tables.values()];
}

async function tablesOf(file: SourceFile, problems: ProblemList): Promise<readonly RawTable[]> {
  const baseName = file.name.split(/[\\/]/u).at(-1) ?? "";
  if (/^[.~]/u.test(baseName)) return [];
  if (/\.csv$/iu.test(baseName)) return csvTable(file, tableNamed(baseName.slice(0, -".csv".length)), problems);
  if (/\.xlsx$/iu.test(baseName)) return sheetTables(file, problems);
  if (otherTableFiles.test(baseName)) problems.add("tables/file-kind", { file: file.name });
  return [];
}

function csvTable(file: SourceFile, table: TableName | undefined, problems: ProblemList): readonly RawTable[] {
  if (table !== undefined) return [readDelimited(file, table, problems)];
  problems.add("tables/file-unknown", { file: file.name }, { values: acceptedTables });
  return [];
}

async function sheetTables(file: SourceFile, problems: ProblemList): Promise<readonly RawTable[]> {
  const sheets = await readSpreadsheet(file, problems);
  return sheets.flatMap((sheet) => {
    if ("table" in sheet) return [sheet.table];
    const place = { file: sheetPlace(file.name, sheet.unknownSheet) };
    problems.add("tables/file-unknown", place, { values: acceptedTables });
    return [];
  });
}
