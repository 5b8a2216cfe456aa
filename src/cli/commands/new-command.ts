import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

/** The options of `spanwright new`. */
export type NewOptions = { minimal?: true; example?: true; xlsx?: true };

/** `spanwright new`: an empty workbook, or one with an example. */
export async function newCommand(folder: string, options: NewOptions, console: Console): Promise<0 | 2> {
  const { newWorkbook } = await import("../../jobs/workbook/new-workbook.ts");
  const { files, problems } = await newWorkbook(nodeDisk, folder, {
    isMinimal: options.minimal === true,
    isExample: options.example === true,
    isSpreadsheet: options.xlsx === true,
  });
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  const next = options.example === true ? "try" : "fill in the tables as its README.md says, then:";
  console.print(`wrote ${counted(files.length, "file")} into ${folder}; ${next} spanwright check ${folder}`);
  return 0;
}

export const addNewCommand: AddCommand = (program, console, settle) => {
  program
    .command("new")
    .description("write an empty workbook with an explanation of every column")
    .argument("<folder>", "new or empty folder")
    .option("--minimal", "only the tables and columns that must be there")
    .option("--example", "filled with an invented loop to play with")
    .option("--xlsx", "one spreadsheet with a sheet a table: notes on its headers, fixed words to choose from")
    .action(async (folder: string, options: NewOptions) => {
      settle(await newCommand(folder, options, console));
    });
};
