import type { WorkbookReading } from "../../jobs/workbook/read-workbook.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { withFirstLook, workbookForms } from "../first-look-options.ts";
import { nodeDisk } from "../node-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";

/** What `spanwright check` is told of a lone table of readings. */
export type CheckOptions = { range?: string; signal?: string; tolerance?: string; json?: boolean };

/** `spanwright check`: every problem of a workbook at its place; writes nothing. */
export async function checkCommand(
  paths: readonly string[],
  { json, ...firstLook }: CheckOptions,
  console: Console,
): Promise<0 | 2> {
  const { readWorkbook } = await import("../../jobs/workbook/read-workbook.ts");
  const { workbookGroups } = await import("../../jobs/workbook/workbook-groups.ts");
  const problems = new ProblemList();
  const groups = await workbookGroups(nodeDisk, paths, {}, problems);
  if (!json) complainOf(problems, console);
  const readings: WorkbookReading[] = [];
  let hasStop = problems.hasStop;
  for (const { disk, path } of groups) {
    const reading = await readWorkbook(disk, path, { today: console.today(), firstLook });
    readings.push(reading);
    if (!json) sayReading(reading, console);
    hasStop ||= !reading.isUnfilled && reading.problems.hasStop;
  }
  if (json) printJson(console, "check", checkAnswer(readings), [problems, ...readings.map((one) => one.problems)]);
  return hasStop ? 2 : 0;
}

function checkAnswer(readings: readonly WorkbookReading[]) {
  const workbooks = readings.map(({ counts, isUnfilled, meanings }) => {
    const { instruments, calibrations, readings: read } = counts;
    return { instruments, calibrations, readings: read, isUnfilled, meanings };
  });
  return { workbooks };
}

function sayReading({ problems, counts, isUnfilled, meanings }: WorkbookReading, console: Console): void {
  if (isUnfilled) {
    console.print("every table has its header and no row: nothing wrong, nothing filled in");
    return;
  }
  complainOf(problems, console);
  for (const said of meanings) console.print(said);
  const stops = problems.all.filter(({ severity }) => severity === "stop").length;
  const notes = problems.all.length - stops;
  const read = [
    counted(counts.instruments, "instrument"),
    counted(counts.calibrations, "calibration"),
    counted(counts.readings, "reading"),
  ].join(", ");
  console.print(
    `${read}: ${stops === 0 ? "nothing wrong" : `${stops} wrong`}, ${notes === 0 ? "no notes" : counted(notes, "note")}`,
  );
}

export const addCheckCommand: AddCommand = (program, console, settle) => {
  const check = program
    .command("check")
    .description("say everything that is wrong with a workbook, and write nothing")
    .argument("<workbook...>", workbookForms);
  withFirstLook(check.option(...jsonOption)).action(async (paths: readonly string[], options: CheckOptions) => {
    settle(await checkCommand(paths, options, console));
  });
};
