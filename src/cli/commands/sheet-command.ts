import { version } from "../../../package.json";
import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

/** The options of `spanwright sheet`. */
export type SheetCommandOptions = {
  out: string;
  tag?: string;
  calibration?: string;
  points?: string;
  cycles?: string;
  paper?: boolean;
};

/** `spanwright sheet`: an entry sheet for a browser, or a form for the pen, for each calibration. */
export async function sheetCommand(workbook: string, options: SheetCommandOptions, console: Console): Promise<0 | 2> {
  const { writeSheets } = await import("../../jobs/workbook/write-sheets.ts");
  const problems = new ProblemList();
  const { paper = false, ...others } = options;
  const asked = { today: console.today(), version, onPaper: paper, ...others };
  const files = await writeSheets(nodeDisk, workbook, asked, problems);
  complainOf(problems, console);
  for (const file of files) console.print(file);
  return problems.hasStop ? 2 : 0;
}

/** Adds `sheet` to the program. */
export const addSheetCommand: AddCommand = (program, console, settle) => {
  program
    .command("sheet")
    .description("write an entry sheet for a browser without a network, or a form for the pen, for each calibration")
    .argument("<workbook>", "folder of tables, or an .xlsx or .ods file with sheets")
    .requiredOption("--out <folder>", "folder for the sheets")
    .option("--tag <tag>", "a loop: its calibrations without readings, or a new one")
    .option("--calibration <number>", "one calibration")
    .option("--points <count>", "test points from end to end; what the loop needs, or 5, where it is left out")
    .option("--cycles <count>", "runs out and back; 3 where it is left out")
    .option("--paper", "a form for the pen, expected signals printed")
    .action(async (workbook: string, options: SheetCommandOptions) => {
      settle(await sheetCommand(workbook, options, console));
    });
};
