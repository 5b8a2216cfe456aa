import { noteContradictions } from "../../assembly/plausibility/note-contradictions.ts";
import { noteDoubts } from "../../assembly/plausibility/note-doubts.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { type FileDigest, fileDigest } from "../../record/file-digest.ts";
import { buildWorkbook, type Workbook } from "../../workbook/build-workbook.ts";
import { casesOf, type HeldCase } from "../../workbook/calibration-case.ts";
import type { RawTable, SourceFile } from "../../workbook/files/raw-table.ts";
import { readDelimited } from "../../workbook/files/read-delimited.ts";
import { readLoneSheet } from "../../workbook/files/read-spreadsheet.ts";
import { firstReading, lookAtReadings } from "../../workbook/look/look-at-readings.ts";
import { type NamedCalibration, namedCalibrations } from "../../workbook/named-calibrations.ts";
import { isOtherTable, isSpreadsheet, mayHoldTable, readTables, withoutEnding } from "../../workbook/read-tables.ts";
import { type Disk, standardInput } from "../disk.ts";
import { readDecimalMark } from "./decimal-mark-option.ts";
import { commandLine, type FirstLook, firstLookTables, optionsText } from "./first-look.ts";
import { toleranceMeanings } from "./tolerance-meanings.ts";

/** A workbook that was read: the calibrations that nothing stops, and every problem. */
export type WorkbookReading = {
  cases: readonly HeldCase[];
  /** Every calibration that the workbook names, those that a problem stops too. */
  named: readonly NamedCalibration[];
  /** Rows of each table that were read without a problem. */
  counts: { instruments: number; calibrations: number; readings: number };
  /** Every table has its header and no row, as a new workbook does; nothing else is wrong. */
  isUnfilled: boolean;
  problems: ProblemList;
  /** What the tolerances mean that were written in words. */
  meanings: readonly string[];
  digests: ReadonlyMap<string, FileDigest>;
};

export type ReadingOptions = {
  today: string;
  firstLook: FirstLook;
  /** `--decimal-mark` as it was typed. */
  decimalMark?: string | undefined;
};

/** Reads and checks a workbook: a folder of tables, a spreadsheet file, or a lone table of readings with options. */
export async function readWorkbook(disk: Disk, path: string, options: ReadingOptions): Promise<WorkbookReading> {
  const problems = new ProblemList();
  const { tables, isLone, digests } = await readFiles(disk, path, options.firstLook, problems);
  const cannotBeJudged = problems.all.some(({ code }) => lookProblems.has(code));
  if ((tables.length === 0 && problems.hasStop) || cannotBeJudged) return nothingRead(problems);
  const decimalMark = readDecimalMark(options.decimalMark, problems);
  if (options.decimalMark !== undefined && decimalMark === undefined) return nothingRead(problems);
  const workbook = buildWorkbook(tables, { today: options.today, firstLook: isLone, decimalMark }, problems);
  return {
    cases: judgedCases(workbook, problems),
    named: namedCalibrations(tables),
    counts: {
      instruments: workbook.instruments.length,
      calibrations: workbook.calibrations.length,
      readings: workbook.readings.length,
    },
    isUnfilled: isUnfilled(tables, problems),
    problems,
    meanings: toleranceMeanings(workbook.instruments),
    digests,
  };
}

/** The calibrations that a workbook names; what is wrong with it is told when it is read. */
export async function namesInWorkbook(
  disk: Disk,
  path: string,
  firstLook: FirstLook,
): Promise<readonly NamedCalibration[]> {
  return namedCalibrations((await readFiles(disk, path, firstLook, new ProblemList())).tables);
}

type FilesRead = { tables: readonly RawTable[]; isLone: boolean; digests: WorkbookReading["digests"] };

/** The tables of files, and the files' digests: their bytes are let go of before the tables are judged. */
async function readFiles(disk: Disk, path: string, firstLook: FirstLook, problems: ProblemList): Promise<FilesRead> {
  const found = await disk.read(path, mayHoldTable);
  if (found === undefined) problems.add("options/not-found", { file: path });
  const files = found?.files ?? [];
  for (const file of files) problems.locate(file.name, file.path);
  const only = found?.isFolder === false ? files[0] : undefined;
  const lone = only && (await loneReadings(only, problems));
  const tables =
    only && lone
      ? firstLookTables(lookAtReadings(lone, problems), nameOf(only), firstLook, problems)
      : await readTables(files, problems);
  if (found !== undefined && lone === undefined) refuseLook(firstLook, problems);
  return { tables, isLone: lone !== undefined, digests: digestsOf(files, firstLook) };
}

/** What stands for an instrument's row says nothing where there is one, and is refused rather than passed over. */
function refuseLook(firstLook: FirstLook, problems: ProblemList): void {
  for (const option of ["range", "signal", "tolerance"] as const) {
    const read = firstLook[option];
    if (read === undefined) continue;
    const why = "the table instruments of the workbook says it";
    const values = { option: `--${option}`, why, accepted: "the option with a lone table of readings only" };
    problems.add("options/overridden", { file: commandLine }, { read, values });
  }
}

/** Options that are missing or cannot be read: columns that would come from them are not blamed as well. */
const lookProblems: ReadonlySet<ProblemCode> = new Set([
  "options/readings-alone",
  "options/not-understood",
  "look/columns-unknown",
]);

/**
 * The calibrations that nothing stops, after their numbers were held against each other. Contradictions of a loop check are
 * warnings of its case, so that the cases are made once more where there are any.
 */
export function judgedCases(workbook: Workbook, problems: ProblemList): readonly HeldCase[] {
  noteDoubts(workbook, problems);
  const cases = casesOf(workbook, problems.all);
  const before = problems.all.length;
  for (const { calibration, read } of cases) {
    if (workbook.loopChecks.has(calibration)) noteContradictions(read(), problems);
  }
  return problems.all.length === before ? cases : casesOf(workbook, problems.all);
}

function isUnfilled(tables: readonly RawTable[], problems: ProblemList): boolean {
  const hasHeadersOnly = tables.every(({ header, rows }) => header.length > 0 && rows.length === 0);
  return hasHeadersOnly && problems.all.every(({ code, severity }) => severity === "warn" || code === "tables/empty");
}

/** A file that is no workbook: text, a spreadsheet without the tables of one, or whatever came on the standard input. */
async function loneReadings(file: SourceFile, problems: ProblemList): Promise<RawTable<"readings"> | undefined> {
  const isPacked = file.bytes[0] === 0x50 && file.bytes[1] === 0x4b;
  if (isSpreadsheet(file.name) || (file.name === standardInput && isPacked)) {
    return firstReading((first) => readLoneSheet(file, first), problems, isSpreadsheet(file.name));
  }
  if (isOtherTable(file.name)) return undefined;
  return firstReading(async (first) => readDelimited(file, "readings", first), problems);
}

function nameOf({ name }: SourceFile): string {
  return name === standardInput ? "readings" : withoutEnding(name.split(/[\\/]/u).at(-1) ?? name);
}

function nothingRead(problems: ProblemList): WorkbookReading {
  return {
    cases: [],
    named: [],
    counts: { instruments: 0, calibrations: 0, readings: 0 },
    isUnfilled: false,
    problems,
    meanings: [],
    digests: new Map(),
  };
}

function digestsOf(files: readonly SourceFile[], firstLook: FirstLook): ReadonlyMap<string, FileDigest> {
  return new Map([
    ...files.map(({ name, bytes }) => [name, fileDigest(bytes)] as const),
    [commandLine, fileDigest(new TextEncoder().encode(optionsText(firstLook)))] as const,
  ]);
}
