import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { meantRecords } from "../meant-records.ts";
import { nodeDisk } from "../node-disk.ts";

export type WorkbookOptions = { out: string };

/** `spanwright workbook`: records as spreadsheets with live formulas. */
export async function workbookCommand(
  records: readonly string[],
  { out }: WorkbookOptions,
  console: Console,
): Promise<0 | 2> {
  const { writeWorkbooks } = await import("../../jobs/records/write-workbooks.ts");
  const problems = new ProblemList();
  const paths = await meantRecords(records, problems, console);
  const written = problems.hasStop ? [] : await writeWorkbooks(nodeDisk, paths, out, problems);
  complainOf(problems, console);
  for (const path of written) console.print(path);
  return problems.hasStop ? 2 : 0;
}

export const addWorkbookCommand: AddCommand = (program, console, settle) => {
  program
    .command("workbook")
    .description("write each record as a spreadsheet whose figures are live formulas")
    .argument("<records...>", "pages of records, their .json files, folders of them, or a quoted pattern")
    .requiredOption("--out <folder>", "folder for the spreadsheets, one .xlsx a record")
    .action(async (records: string[], options: WorkbookOptions) => {
      settle(await workbookCommand(records, options, console));
    });
};
