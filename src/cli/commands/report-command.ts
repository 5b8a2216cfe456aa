import { version } from "../../../package.json";
import { summaryRows } from "../../jobs/records/summary-rows.ts";
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
import { reportThreads, threadsAsked } from "../report-threads.ts";
import { programForRecord } from "../tested-program.ts";

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
  json?: boolean;
};

/** `spanwright report`: a record and a page for each calibration, and a short table of what came out. */
export async function reportCommand(
  paths: readonly string[],
  options: ReportOptions,
  console: Console,
): Promise<0 | 2> {
  const { reportCalibrations } = await import("../../jobs/records/report-calibrations.ts");
  const { workbookGroups } = await import("../../jobs/workbook/workbook-groups.ts");
  const { range, signal, tolerance, tag, calibration, out, rule, guardFactor, monteCarlo, filed, decimalMark, json } =
    options;
  const ranWith = await programForRecord(console);
  if (ranWith === undefined) return 2;
  const problems = new ProblemList();
  const threads = threadsAsked(options.workers, problems);
  if (problems.hasStop) {
    complainOf(problems, console);
    return 2;
  }
  const interruption = interruptionOf(process);
  const { indexRowOf, writeIndex } = await import("../../jobs/records/write-index.ts");
  const rows: IndexRow[] = [];
  const lists: ProblemList[] = [problems];
  const summary = [...summaryRows([])];
  let hasStop = false;
  for (const { disk, path } of workbookGroups(nodeDisk, paths, { tag, calibration }, problems)) {
    const reports = await reportCalibrations(disk, path, {
      out,
      tag,
      calibration,
      today: console.today(),
      firstLook: { range, signal, tolerance, tag, calibration },
      decimalMark,
      decision: { rule, guardFactor, monteCarlo },
      filed: filed === undefined ? undefined : { disk: nodeFilingDisk(console.complain), path: filed },
      softwareVersion: version,
      ranWith,
      onRecord: (written) => {
        rows.push(indexRowOf(written, out));
        summary.push(...summaryRows([written]).slice(1));
      },
      reporterFor: (records) => reportThreads(records, threads),
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
  const isFaulty = hasStop || problems.hasStop || interruption.isAsked();
  if (json) printJson(console, "report", { records: answerOf(rows, out) }, lists);
  else {
    complainOf(problems, console);
    if (rows.length > 0) console.print(alignedTable(summary));
    if (isFaulty) sayWhatIsMissing(rows.length, interruption.isAsked(), console);
  }
  return isFaulty ? 2 : 0;
}

function answerOf(rows: readonly IndexRow[], out: string) {
  return rows.map(({ summary: _, page, ...row }) => ({ ...row, page: `${out}/${page}` }));
}

function sayWhatIsMissing(written: number, isStopped: boolean, console: Console): void {
  const records = counted(written, "record was", "records were");
  const some = `${records} written; those that a problem touches were not`;
  const outcome = written === 0 ? "nothing was written; mend what is wrong and run again" : some;
  console.complain(isStopped ? `stopped when asked to: ${records} written, each whole` : outcome);
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
    .option("--quiet", "no line that counts")
    .option(...jsonOption)
    .option("--monte-carlo <draws>", "check each uncertainty budget by so many draws, such as 1000000");
  withFirstLook(report).action(async (paths: readonly string[], options: ReportOptions) => {
    settle(await reportCommand(paths, options, console));
  });
};
