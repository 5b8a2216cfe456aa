import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

/** `spanwright new`: an empty workbook. */
export async function newCommand(folder: string, console: Console): Promise<0 | 2> {
  const { newWorkbook } = await import("../../jobs/workbook/new-workbook.ts");
  const { files, problems } = await newWorkbook(nodeDisk, folder);
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(
    `wrote ${counted(files.length, "file")} into ${folder}; fill in the tables as its README.md says, then: spanwright check ${folder}`,
  );
  return 0;
}

/** Adds `new` to the program. */
export const addNewCommand: AddCommand = (program, console, settle) => {
  program
    .command("new")
    .description("write an empty workbook with an explanation of every column")
    .argument("<folder>", "new or empty folder")
    .action(async (folder: string) => {
      settle(await newCommand(folder, console));
    });
};
