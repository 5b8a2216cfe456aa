import { type TableName, tableNames } from "../model/table-names.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import { placeText } from "../problems/sentence.ts";
import { placeOfTable } from "./files/place-of-table.ts";
import type { RawTable, SourceFile } from "./files/raw-table.ts";
import { readDelimited } from "./files/read-delimited.ts";
import { readSpreadsheet } from "./files/read-spreadsheet.ts";
import { tableNamed } from "./files/table-named.ts";
import { foldedColumnName } from "./header-columns.ts";
import { nearestWord } from "./nearest-word.ts";

/** Kinds of file that hold tables and that nothing here reads. */
const otherTableFiles = /\.(?:xls|xlsb|xlsm|xltx|numbers)$/iu;

/** Spreadsheets that are read. */
const spreadsheetFile = /\.(?:xlsx|ods)$/iu;

/** Text with a row a line: commas, semicolons or tabs between the cells. */
const delimitedFile = /\.(?:csv|tsv|txt)$/iu;

/** Whether a file by its name alone is a table in the form of text. */
function isDelimited(name: string): boolean {
  return delimitedFile.test(name);
}

/** A table's name without what says its kind. */
export function withoutEnding(name: string): string {
  return name.replace(delimitedFile, "").replace(spreadsheetFile, "");
}

/** Whether a file by its name holds tables in a kind that is not read. */
export function isOtherTable(name: string): boolean {
  return otherTableFiles.test(name);
}

/** Whether a file by its name is a spreadsheet that is read. */
export function isSpreadsheet(name: string): boolean {
  return spreadsheetFile.test(name);
}

/**
 * Whether a file of a folder may hold a table, by its name: what is none need not be read from the disk. Text files are
 * mostly notes, so that a .txt file counts only where it has the name of a table.
 */
export function mayHoldTable(name: string): boolean {
  const baseName = name.split(/[\\/]/u).at(-1) ?? "";
  if (/^[.~]/u.test(baseName)) return false;
  if (/\.txt$/iu.test(baseName)) return tableNamed(withoutEnding(baseName)) !== undefined;
  return isDelimited(baseName) || spreadsheetFile.test(baseName) || otherTableFiles.test(baseName);
}

function valuesFor(name: string) {
  const nearest = nearestWord(foldedColumnName(name), tableNames);
  return { nearest: nearest === undefined ? "" : `; did you mean ${nearest}?`, tables: tableNames.join(", ") };
}

/**
 * Reads every table among the files of a workbook as text: a .csv, .tsv or .txt file is the table that its name says, an
 * .xlsx or .ods file holds sheets of those names. Hidden files and whatever is no table (notes, pictures) are passed over.
 *
 * @returns at most one raw table a name, in the order of the files
 */
export async function readTables(files: readonly SourceFile[], problems: ProblemList): Promise<readonly RawTable[]> {
  const tables = new Map<TableName, RawTable>();
  for (const file of files) {
    for (const table of await tablesOf(file, problems)) {
      const first = tables.get(table.table);
      if (first === undefined) tables.set(table.table, table);
      else {
        const values = { table: table.table, first: placeText(placeOfTable(first)) };
        problems.add("tables/table-twice", placeOfTable(table), { values });
      }
    }
  }
  return [...tables.values()];
}

async function tablesOf(file: SourceFile, problems: ProblemList): Promise<readonly RawTable[]> {
  const baseName = file.name.split(/[\\/]/u).at(-1) ?? "";
  if (!mayHoldTable(baseName)) return [];
  if (isDelimited(baseName)) return delimitedTable(file, tableNamed(withoutEnding(baseName)), problems);
  if (spreadsheetFile.test(baseName)) return sheetTables(file, problems);
  problems.add("tables/file-kind", { file: file.name });
  return [];
}

function delimitedTable(file: SourceFile, table: TableName | undefined, problems: ProblemList): readonly RawTable[] {
  if (table !== undefined) return [readDelimited(file, table, problems)];
  problems.add("tables/file-unknown", { file: file.name }, { values: valuesFor(withoutEnding(file.name)) });
  return [];
}

async function sheetTables(file: SourceFile, problems: ProblemList): Promise<readonly RawTable[]> {
  const sheets = await readSpreadsheet(file, problems);
  return sheets.flatMap((sheet) => {
    if ("table" in sheet) return [sheet.table];
    const place = { file: file.name, sheet: sheet.unknownSheet };
    problems.add("tables/file-unknown", place, { values: valuesFor(sheet.unknownSheet) });
    return [];
  });
}
