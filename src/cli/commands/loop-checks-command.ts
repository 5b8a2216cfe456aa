import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

export type LoopChecksOptions = { tag?: string; guide?: true };

/** `spanwright loop-checks`: the items of a loop check that apply to the tags of a workbook; writes nothing. */
export async function loopChecksCommand(
  workbook: string,
  { tag, guide }: LoopChecksOptions,
  console: Console,
): Promise<0 | 2> {
  const { loopCheckSheet } = await import("../../jobs/workbook/loop-check-sheet.ts");
  const options = { today: console.today(), tag, asGuide: guide === true };
  const { text, problems } = await loopCheckSheet(nodeDisk, workbook, options);
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(text);
  return 0;
}

export const addLoopChecksCommand: AddCommand = (program, console, settle) => {
  program
    .command("loop-checks")
    .description("print the items of a loop check for each tag, as rows of the table loop_checks to fill in")
    .argument("<workbook>", "folder of tables, or an .xlsx file with sheets")
    .option("--tag <tag>", "only this tag")
    .option("--guide", "print what to do, what to write down and what is accepted instead")
    .action(async (workbook: string, options: LoopChecksOptions) => {
      settle(await loopChecksCommand(workbook, options, console));
    });
};
