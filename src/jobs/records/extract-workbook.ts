import type { InputFile } from "../../model/calibration-case.ts";
import { tableColumns } from "../../model/table-columns.ts";
import { type TableName, tableNames } from "../../model/table-names.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { type TypedTable, writeTyped } from "../../workbook/files/write-typed.ts";
import type { Disk, NewFile } from "../disk.ts";
import { commandLine } from "../workbook/first-look.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { readRecordFiles } from "./read-record-files.ts";

/** Paths of the tables that were written, and what `report` has to be told to make the same record of them. */
export type Extracted = { files: readonly string[]; options: readonly string[]; hasHistory: boolean };

/**
 * Writes the tables that a record was made of into a new folder: every cell as it was typed, with the delimiter and the
 * decimal mark that it had. Rows of other calibrations were never in the record, so that files, lines and fingerprint
 * differ from those of the first workbook, and nothing else.
 *
 * @returns nothing, and a problem, where the record is none, was changed after it was sealed, or the folder is not empty
 */
export async function extractWorkbook(
  disk: Disk,
  path: string,
  folder: string,
  problems: ProblemList,
): Promise<Extracted | undefined> {
  const [file] = await readRecordFiles(disk, [path], problems);
  if (file !== undefined && checkSeal(file.written).length > 0) problems.add("filing/seal-broken", { file: path });
  const names = (await disk.namesIn(folder)) ?? [];
  if (names.length > 0) {
    problems.add("options/folder-not-empty", { file: folder }, { values: { files: names.slice(0, 5).join(", ") } });
  }
  if (file === undefined || problems.hasStop) return undefined;
  const { record } = file;
  const files = tableNames.flatMap((table) => tableFile(record, table, folder));
  if (!(await writeOrTell(() => disk.writeTogether(files), folder, problems))) return undefined;
  return {
    files: files.map((one) => one.path),
    options: optionsOf(record),
    hasHistory: record.history !== undefined || record.filedRate !== undefined,
  };
}

type SourceRow = SealedRecord["inputs"]["rows"]["readings"][number];

/** What a first look took from the command line stood in no table. */
function tableFile({ inputs }: SealedRecord, table: TableName, folder: string): readonly NewFile[] {
  const rows = (inputs.rows as Readonly<Partial<Record<TableName, readonly SourceRow[]>>>)[table] ?? [];
  const [first] = rows;
  if (first === undefined || first.file === commandLine) return [];
  const files = inputs.files as readonly InputFile[];
  const file = files.find(({ name, tables }) => name === first.file && tables.includes(table));
  const typed = typedTable(table, rows, file);
  return [{ path: `${folder}/${table}.csv`, text: writeTyped(typed) }];
}

/** Columns of the table in its order, then those that only the person knows who made them. */
function typedTable(table: TableName, rows: readonly SourceRow[], file: InputFile | undefined): TypedTable {
  const filled = new Set(rows.flatMap(({ cells }) => Object.keys(cells)));
  const known = tableColumns(table).filter(({ name }) => filled.delete(name));
  const columns = [...known, ...[...filled].map((name) => ({ name, reads: "text" as const }))];
  const isComma = file?.decimalMark === "comma";
  const delimiter = file?.delimiter ?? ",";
  return {
    columns,
    rows: rows.map(({ cells }) => columns.map(({ name }) => (Object.hasOwn(cells, name) ? (cells[name] ?? "") : ""))),
    delimiter: isComma && delimiter === "," ? ";" : delimiter,
  };
}

/** Options of `report` that the record was made with, as they are typed. */
function optionsOf({ decisionRule: { givenForThisRun }, monteCarloDraws, inputs }: SealedRecord): readonly string[] {
  const { name, guardFactor } = givenForThisRun ?? {};
  const [instrument] = inputs.rows.instruments;
  return [
    ...(instrument?.file === commandLine ? firstLookOptions(instrument.cells) : []),
    ...(name === undefined ? [] : [`--rule ${quoted(name)}`]),
    ...(guardFactor === undefined ? [] : [`--guard-factor ${guardFactor}`]),
    ...(monteCarloDraws === undefined ? [] : [`--monte-carlo ${monteCarloDraws}`]),
  ];
}

function firstLookOptions(cells: SourceRow["cells"]): readonly string[] {
  const { tag = "", tolerance = "" } = cells;
  const ends = (of: "range" | "signal", unit: string) =>
    `--${of} ${quoted(`${cells[`${of}_lower`]}:${cells[`${of}_upper`]}${cells[unit]}`)}`;
  return [
    `--tag ${quoted(tag)}`,
    ends("range", "distance_unit"),
    ends("signal", "signal_unit"),
    `--tolerance ${quoted(tolerance)}`,
  ];
}

/** For a shell: what a record holds is typed by nobody without a look at it. */
function quoted(text: string): string {
  return /^[\w.:%+-]+$/u.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
