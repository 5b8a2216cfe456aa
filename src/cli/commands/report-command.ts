import { version } from "../../../package.json";
import { summaryOfIndex } from "../../jobs/records/summary-rows.ts";
import type { IndexRow } from "../../jobs/records/write-index.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { withFirstLook, workbookForms } from "../first-look-options.ts";
import { interruptionOf } from "../interruption.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";
import { alignedTable } from "../print-table.ts";
import { progressOn } from "../progress.ts";
import { reportThreads } from "../report-threads.ts";
import { programForRecord, testedProgram } from "../tested-program.ts";
import { threadsAsked } from "../threads-for.ts";

/** The options of `spanwright report` as the command line gives them. */
export type ReportOptions = {
  out: string;
  tag?: string;
  calibration?: string;
  range?: string;
  signal?: string;
  tolerance?: string;
  rule?: string;
  guardFactor?: string;
  monteCarlo?: string;
  filed?: string;
  decimalMark?: string;
  workers?: string;
  quiet?: boolean;
  resume?: boolean;
  json?: boolean;
};

/** `spanwright report`: a record and a page for each calibration, and a short table of what came out. */
export async function reportCommand(
  paths: readonly string[],
  options: ReportOptions,
  console: Console,
): Promise<0 | 2> {
  const tested = testedProgram();
  const { reportCalibrations } = await import("../../jobs/records/report-calibrations.ts");
  const { workbookGroups } = await import("../../jobs/workbook/workbook-groups.ts");
  const { range, signal, tolerance, tag, calibration, out, rule, guardFactor, monteCarlo, filed, decimalMark, json } =
    options;
  const ranWith = await programForRecord(console, tested);
  if (ranWith === undefined) return 2;
  const problems = new ProblemList();
  const threads = threadsAsked(options.workers, problems);
  refuseWithResume(options, problems);
  if (problems.hasStop) return refused(problems, console);
  const interruption = interruptionOf(process);
  const { writeIndex } = await import("../../jobs/records/write-index.ts");
  const rows: IndexRow[] = [];
  const lists: ProblemList[] = [problems];
  let hasStop = false;
  let kept = 0;
  for (const { disk, path } of await workbookGroups(nodeDisk, paths, { tag, calibration }, problems)) {
    const reports = await reportCalibrations(disk, path, {
      ...{ out, tag, calibration, decimalMark, ranWith },
      today: console.today(),
      firstLook: { range, signal, tolerance, tag, calibration },
      decision: { rule, guardFactor, monteCarlo },
      filed: filed === undefined ? undefined : { disk: nodeFilingDisk(console.complain), path: filed },
      softwareVersion: version,
      onRecord: (written) => {
        if (written.isKept) kept += 1;
        rows.push(written.row);
      },
      reporterFor: (records) => reportThreads(records, threads),
      isResumed: options.resume,
      isStopped: interruption.isAsked,
      onWritten: progressOn(console, options.quiet),
    });
    lists.push(reports.reading.problems);
    if (!json) complainOf(reports.reading.problems, console);
    hasStop ||= reports.reading.problems.hasStop;
  }
  interruption.end();
  if (rows.length > 0) {
    await writeIndex({ disk: nodeDisk, filing: nodeFilingDisk(console.complain) }, out, rows, problems);
  }
  const isWrong = hasStop || problems.hasStop;
  const isStopped = interruption.isAsked();
  if (json) printJson(console, "report", { records: answerOf(rows, out) }, lists);
  else {
    complainOf(problems, console);
    if (rows.length > 0) console.print(alignedTable(summaryOfIndex(rows, out)));
    sayHowItEnded({ written: rows.length - kept, kept, isStopped, isWrong }, console);
  }
  return isWrong || isStopped ? 2 : 0;
}

function refused(problems: ProblemList, console: Console): 2 {
  complainOf(problems, console);
  return 2;
}

type End = { written: number; kept: number; isStopped: boolean; isWrong: boolean };

function sayHowItEnded({ written, kept, isStopped, isWrong }: End, console: Console): void {
  if (kept > 0) console.complain(`${counted(kept, "record")} of the same rows lay there already, and stayed`);
  if (isStopped) {
    const words = counted(written, "record was", "records were");
    console.complain(`stopped when asked to: ${words} written, each whole; the same with --resume does the others`);
  } else if (isWrong) sayWhatIsMissing(written + kept, console);
}

const decidingOptions = {
  rule: "--rule",
  guardFactor: "--guard-factor",
  monteCarlo: "--monte-carlo",
  filed: "--filed",
  decimalMark: "--decimal-mark",
} as const;

/** A record that stays would not heed them. */
function refuseWithResume(options: ReportOptions, problems: ProblemList): void {
  if (options.resume !== true) return;
  const why = "--resume leaves records of the same rows as they are";
  for (const [key, option] of Object.entries(decidingOptions)) {
    const read = options[key as keyof typeof decidingOptions];
    const values = { option, why, accepted: "one of the two" };
    if (read !== undefined) problems.add("options/overridden", { file: "command line" }, { read, values });
  }
}

function answerOf(rows: readonly IndexRow[], out: string) {
  return rows.map(({ summary: _, page, ...row }) => ({ ...row, page: `${out}/${page}` }));
}

function sayWhatIsMissing(written: number, console: Console): void {
  const some = `${counted(written, "record was", "records were")} written; those that a problem touches were not`;
  console.complain(written === 0 ? "nothing was written; mend what is wrong and run again" : some);
}

export const addReportCommand: AddCommand = (program, console, settle) => {
  const report = program
    .command("report")
    .description("make the record of each calibration in a workbook")
    .argument("<workbook...>", workbookForms)
    .option("--out <folder>", "folder for the records", "reports")
    .option("--tag <tag>", "only this tag; for a lone table, the tag to give it")
    .option("--calibration <number>", "only this calibration; for a lone table, the number to give it")
    .option(
      "--rule <name>",
      "decision rule for this run: simple acceptance, guard band, non-binary guard band, managed guard band",
    )
    .option("--guard-factor <0 to 1>", "guard band as a part of the expanded uncertainty")
    .option("--filed <folder>", "folder of filed records: those before each calibration are its history")
    .option("--decimal-mark <point or comma>", "of pages and labels, over what the rows of the instruments say")
    .option("--workers <count>", "threads that make records; from 50 records on as many as there are processors")
    .option("--resume", "make only the records that are missing, or whose rows have changed")
    .option("--quiet", "no line that counts")
    .option(...jsonOption)
    .option("--monte-carlo <draws>", "check each uncertainty budget by so many draws, such as 1000000");
  withFirstLook(report).action(async (paths: readonly string[], options: ReportOptions) => {
    settle(await reportCommand(paths, options, console));
  });
};
