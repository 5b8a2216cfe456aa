import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

/** The options of `spanwright rows`. */
export type RowsOptions = { tag?: string; calibration?: string; points?: string; cycles?: string; phase?: string };

/** `spanwright rows`: the readings to be taken of a tag, as rows to fill in; writes nothing. */
export async function rowsCommand(workbook: string, options: RowsOptions, console: Console): Promise<0 | 2> {
  const { readingRows } = await import("../../jobs/workbook/reading-rows.ts");
  const { text, problems } = await readingRows(nodeDisk, workbook, { today: console.today(), ...options });
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(text);
  return 0;
}

/** Adds `rows` to the program. */
export const addRowsCommand: AddCommand = (program, console, settle) => {
  program
    .command("rows")
    .description("print the readings to be taken of a tag as rows of the table readings to fill in")
    .argument("<workbook>", "folder of tables, or an .xlsx or .ods file with sheets")
    .option("--tag <tag>", "only this tag")
    .option("--calibration <number>", "the calibration that they belong to")
    .option("--points <count>", "test points from end to end; 5 where it is left out")
    .option("--cycles <count>", "runs out and back; 3 where it is left out")
    .option("--phase <as_found or as_left>", "one phase only")
    .action(async (workbook: string, options: RowsOptions) => {
      settle(await rowsCommand(workbook, options, console));
    });
};
