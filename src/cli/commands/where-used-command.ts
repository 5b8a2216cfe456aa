import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { alignedTable } from "../print-table.ts";

export type WhereUsedOptions = { standard: string; certificate?: string };

/** `spanwright where-used`: the filed records that rest on a standard. */
export async function whereUsedCommand(folder: string, options: WhereUsedOptions, console: Console): Promise<0 | 2> {
  const { listWhereUsed } = await import("../../jobs/filing/list-where-used.ts");
  const { rows, problems } = await listWhereUsed(nodeFilingDisk(console.complain), folder, options);
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(alignedTable(rows));
  return 0;
}

export const addWhereUsedCommand: AddCommand = (program, console, settle) => {
  program
    .command("where-used")
    .description("list the filed records that rest on a standard, superseded ones too: what to look at if it was wrong")
    .argument("<folder>", "folder into which records are filed")
    .requiredOption("--standard <name>", "the standard, as the records name it")
    .option("--certificate <number>", "one certificate of it alone")
    .action(async (folder: string, options: WhereUsedOptions) => {
      settle(await whereUsedCommand(folder, options, console));
    });
};
