import { assembleRecord } from "../../assembly/assemble-record.ts";
import { noteContradictions } from "../../assembly/plausibility/note-contradictions.ts";
import { noteDoubts } from "../../assembly/plausibility/note-doubts.ts";
import type { Problem } from "../../problems/problem.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { acceptedIn, quoted, whatIsWrong } from "../../problems/sentence.ts";
import type { CalibrationRecord } from "../../record/record-schema.ts";
import { buildWorkbook } from "../../workbook/build-workbook.ts";
import { casesOf } from "../../workbook/calibration-case.ts";
import { type PlannedRow, type SheetData, type TypedTableName, typedTables } from "../sheet-data.ts";
import type { Entries } from "./entries.ts";
import { entryTables, filledRows, rawTables } from "./entry-tables.ts";

/**
 * A problem of the tables, at the row of the sheet that it belongs to. `isOfRow`: it is about what stands in that row, and
 * not about the phase that the row begins.
 */
export type SheetProblem = {
  isStop: boolean;
  isOfRow: boolean;
  row?: string;
  column?: string;
  place: string;
  says: string;
};

/** Everything that the program says of what was typed so far. */
export type Judgement = { record: CalibrationRecord | undefined; problems: readonly SheetProblem[] };

/**
 * The same checks, figures and words that the command gives for the tables which this sheet hands back.
 *
 * @param data of the sheet
 * @param entries what was typed
 * @param today ISO date, for days that lie ahead
 * @returns the record, where nothing stops it, and every problem
 * Source: `buildWorkbook`, `noteDoubts`, `noteContradictions`, `assembleRecord`: the parts of the command itself.
 */
export function judgeSheet(data: SheetData, entries: Entries, today: string): Judgement {
  const tables = rawTables(entryTables(data, entries, { typedIn: data.sheet }), data.mark);
  const problems = new ProblemList();
  for (const { file, rows } of tables) if (rows.length === 0) problems.add("tables/empty", { file });
  const workbook = buildWorkbook(tables, { today }, problems);
  noteDoubts(workbook, problems);
  for (const { read } of casesOf(workbook, problems.all)) noteContradictions(read(), problems);
  const [found] = casesOf(workbook, problems.all);
  const rows = found?.read();
  const filled = new Map(
    typedTables.map((table) => [`${table}.csv`, { table, rows: filledRows(data, entries, table) }]),
  );
  const digests = new Map(tables.map(({ file }) => [file, unsealed]));
  return {
    record: rows && assembleRecord(rows, { softwareVersion: data.program, digests, warnings: rows.warnings }),
    problems: problems.all.map((problem) => atRow(problem, filled)),
  };
}

/** A sheet seals nothing: the command does, from the files that are handed back. */
const unsealed = Object.freeze({ byteLength: 0, sha256: "" });

/** The typed tables by their files, with the rows that are in them. */
type FilledTables = ReadonlyMap<string, { table: TypedTableName; rows: readonly PlannedRow[] }>;

function atRow(problem: Problem, filled: FilledTables): SheetProblem {
  const { file, line, column } = problem.place;
  const { table, rows = [] } = filled.get(file) ?? {};
  const row = line === undefined ? undefined : rows[line - firstLine];
  const read = problem.read === undefined ? "" : `: ${quoted(problem.read)}`;
  return {
    isStop: problem.severity === "stop",
    isOfRow: problem.severity === "stop" || /^(?:plausible|verdict)\//u.test(problem.code),
    ...(row && { row: row.id }),
    ...(column !== undefined && { column }),
    place: table === undefined ? file : tableWords[table],
    says: `${whatIsWrong(problem)}${read}. Accepted: ${acceptedIn(problem)}.`,
  };
}

/** The line of the first row in a file whose first line is its header. */
const firstLine = 2;

const tableWords: Readonly<Record<TypedTableName, string>> = Object.freeze({
  calibrations: "the calibration",
  readings: "readings",
  trips: "switched outputs",
  loop_checks: "loop check",
});
