import type { Column } from "../../model/column.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { requiredTables, type TableName, tableNames } from "../../model/table-names.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import { type WrittenCell, writeSpreadsheet } from "../../workbook/files/write-spreadsheet.ts";
import type { Disk, NewFile } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { exampleTables, firstRows } from "./example-workbook.ts";

/** `isMinimal`: the tables and columns that must be there; `isExample`: with rows to play with; `isSpreadsheet`: one file. */
export type NewWorkbookOptions = { isMinimal?: boolean; isExample?: boolean; isSpreadsheet?: boolean };

/** Writes a workbook, empty or with an example: one file a table or one spreadsheet, and a README that explains it. */
export async function newWorkbook(
  disk: Disk,
  folder: string,
  options: NewWorkbookOptions = {},
): Promise<{ files: readonly string[]; problems: ProblemList }> {
  const problems = new ProblemList();
  const names = (await disk.namesIn(folder)) ?? [];
  if (names.length > 0) {
    problems.add("options/folder-not-empty", { file: folder }, { values: { files: names.slice(0, 5).join(", ") } });
    return { files: [], problems };
  }
  const tables = tablesWanted(options).map((table) => {
    const columns = columnsWanted(table, options);
    return { name: table, columns, rows: rowsWanted(table, columns, options) };
  });
  const files: readonly NewFile[] = [
    ...(options.isSpreadsheet
      ? [{ path: `${folder}/workbook.xlsx`, text: await writeSpreadsheet(tables) }]
      : tables.map(({ name, columns, rows }) => ({
          path: `${folder}/${name}.csv`,
          text: writeDelimited([columns.map((column) => column.name), ...rows], { newline: "\n" }),
        }))),
    { path: `${folder}/README.md`, text: readme() },
  ];
  const isWritten = await writeOrTell(() => disk.writeTogether(files), folder, problems);
  return { files: isWritten ? files.map(({ path }) => path) : [], problems };
}

/** An example leaves out what its loop does not need. */
function tablesWanted({ isMinimal, isExample }: NewWorkbookOptions): readonly TableName[] {
  if (isMinimal) return requiredTables;
  return isExample
    ? tableNames.filter((table) => !["loop_checks", "controller_limits", "candidates"].includes(table))
    : tableNames;
}

/** Columns that no row may leave empty, though a rule in words says so and not the table. */
const neededToo: Readonly<Partial<Record<TableName, readonly string[]>>> = { readings: ["signal"] };

function columnsWanted(table: TableName, { isMinimal, isExample }: NewWorkbookOptions): readonly Column[] {
  const isFilled = (name: string) => exampleTables[table].some((row) => row[name] !== undefined);
  return tableColumns(table)
    .filter(({ bySheet }) => bySheet !== true)
    .filter(({ name, required }) => !isMinimal || required || neededToo[table]?.includes(name))
    .filter(({ name }) => isMinimal || !isExample || isFilled(name));
}

function rowsWanted(
  table: TableName,
  columns: readonly Column[],
  { isExample }: NewWorkbookOptions,
): readonly (readonly WrittenCell[])[] {
  const rows = isExample ? exampleTables[table] : [];
  return rows.map((row) => columns.map(({ name }) => cellOf(row[name] ?? "")));
}

/** A number stays a number in a spreadsheet, with the digits that it has; in a table of text they are the same. */
function cellOf(text: string): WrittenCell {
  return text !== "" && String(Number(text)) === text ? Number(text) : text;
}

function readme(): string {
  const required = requiredTables.join(", ");
  return [
    "# A workbook of calibrations",
    "",
    `A row a thing, the first row names the columns. The tables ${required} are needed; the others may stay empty or`,
    "be deleted, and so may every column that is not marked as needed. Everything in the examples is invented.",
    "An empty cell means 'not measured' or 'not stated'. Dates are written year-month-day, such as 2026-03-04.",
    ...tableNames.flatMap(tableSection),
    "",
  ].join("\n");
}

function tableSection(table: TableName): readonly string[] {
  const example = firstRows[table];
  const filled = tableColumns(table).filter(({ name }) => example[name] !== undefined);
  return [
    "",
    `## ${table}.csv`,
    "",
    "Example:",
    "",
    "```",
    filled.map(({ name }) => name).join(","),
    filled.map(({ name }) => example[name]).join(","),
    "```",
    "",
    "| column | what it holds |",
    "|---|---|",
    ...tableColumns(table).map(columnRow),
  ];
}

function columnRow({ name, about, required, ...column }: Column): string {
  const choices = column.reads === "choice" || column.reads === "choices" ? `: ${column.choices.join(", ")}` : "";
  return `| ${name}${required ? " (needed)" : ""} | ${about}${choices} |`;
}
