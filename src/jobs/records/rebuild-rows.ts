import type { InputFile } from "../../model/calibration-case.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { type TableName, tableNames } from "../../model/table-names.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { sentence } from "../../problems/sentence.ts";
import type { Doubt } from "../../record/doubt.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { buildWorkbook } from "../../workbook/build-workbook.ts";
import type { CalibrationCase } from "../../workbook/calibration-case.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { commandLine } from "../workbook/first-look.ts";
import { judgedCases } from "../workbook/read-workbook.ts";

type SourceRow = CalibrationRecord["inputs"]["rows"]["readings"][number];

/** Which day it was when the tables were read, no record says: none of its dates lies in the future. */
const lastDay = "9999-12-31";

/**
 * The rows of a record, read once more from the text that it carries, by the reader and the checks of every workbook.
 * What was said of the files (name, digest, length, encoding, delimiter, decimal mark) is taken as recorded: the files
 * themselves are not there.
 */
export function rebuildRows({
  inputs,
  calibration: { calibration: name },
  instrument: { decimalMark },
}: CalibrationRecord): { rows: CalibrationCase } | { doubts: readonly Doubt[] } {
  const rowsByTable: Readonly<Partial<Record<TableName, readonly SourceRow[] | undefined>>> = inputs.rows;
  const files = inputs.files as readonly InputFile[];
  const problems = new ProblemList();
  const tables: RawTable[] = [];
  const doubts: Doubt[] = [];
  for (const table of tableNames) {
    const rows = rowsByTable[table] ?? [];
    const [first] = rows;
    if (first === undefined) continue;
    const raw = rawTable(table, rows, files);
    if (raw === undefined) doubts.push(undescribed(table, first.file));
    else tables.push(raw);
  }
  if (doubts.length > 0) return { doubts };
  const firstLook = inputs.rows.calibrations[0]?.file === commandLine;
  const workbook = buildWorkbook(tables, { today: lastDay, firstLook, decimalMark }, problems);
  const found = judgedCases(workbook, problems).find(({ calibration }) => calibration === name);
  if (found === undefined) return { doubts: unreadable(problems) };
  return { rows: { ...found.read(), files: files.map(descriptionOf) } };
}

/** A table with the columns that its rows fill in. */
function rawTable(table: TableName, rows: readonly SourceRow[], files: readonly InputFile[]): RawTable | undefined {
  const file = rows[0]?.file ?? "";
  const description = files.find(({ name, tables }) => name === file && tables.includes(table));
  if (description === undefined) return undefined;
  const { name, encoding, delimiter, decimalMark, sheets } = description;
  const header = headerOf(table, rows);
  const sheet = sheets?.find((one) => one.table === table);
  return {
    table,
    file,
    ...(sheet && { sheet: { name: sheet.name, letters: header.map((column) => textOf(sheet.letters, column)) } }),
    header,
    headerLine: 1,
    rows: rows.map(({ line, cells }) => ({ line, cells: header.map((column) => textOf(cells, column)) })),
    decimalMark,
    description: { name, encoding, delimiter, decimalMark },
  };
}

/** A name that is no column is kept, for the reader to refuse. */
function headerOf(table: TableName, rows: readonly SourceRow[]): readonly string[] {
  const filled = new Set(rows.flatMap(({ cells }) => Object.keys(cells)));
  const known = tableColumns(table).map(({ name }) => name);
  return [...known.filter((name) => filled.has(name)), ...[...filled].filter((name) => !known.includes(name))];
}

/** What every object inherits is no cell. */
function textOf(cells: SourceRow["cells"], column: string): string {
  return Object.hasOwn(cells, column) ? (cells[column] ?? "") : "";
}

function descriptionOf({ name, encoding, delimiter, decimalMark, tables, sheets }: InputFile): InputFile {
  return { name, encoding, delimiter, decimalMark, tables, ...(sheets && { sheets }) };
}

function undescribed(table: TableName, file: string): Doubt {
  return { about: "figures", place: `inputs.rows.${table}`, says: `inputs.files does not say that ${file} holds them` };
}

const mostTold = 5;

function unreadable(problems: ProblemList): readonly Doubt[] {
  const stops = problems.all.filter(({ severity }) => severity === "stop").slice(0, mostTold);
  const sayings = stops.length === 0 ? ["the calibration is not among them"] : stops.map(sentence);
  return sayings.map((saying) => ({
    about: "figures",
    place: "inputs.rows",
    says: `the rows cannot be read again: ${saying}`,
  }));
}
