import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";

export type DisposeOptions = { before: string; reason: string; by: string };

/** `spanwright dispose`: pages that were kept long enough go, each with a line of the ledger. */
export async function disposeCommand(folder: string, options: DisposeOptions, console: Console): Promise<0 | 2> {
  const { disposeFiledPages } = await import("../../jobs/filing/dispose-filed-pages.ts");
  const { says, problems } = await disposeFiledPages(nodeFilingDisk(console.complain), folder, options);
  complainOf(problems, console);
  if (says.length > 0) console.print(says.join("\n"));
  return problems.hasStop ? 2 : 0;
}

export const addDisposeCommand: AddCommand = (program, console, settle) => {
  program
    .command("dispose")
    .description("remove pages of work before a day, each with a line of the ledger; the last of a loop in use stays")
    .argument("<folder>", "the folder that keeps the records")
    .requiredOption("--before <day>", "pages of work before this day, such as 2016-01-01")
    .requiredOption("--reason <text>", "the rule by which they are kept no longer")
    .requiredOption("--by <name>", "who disposes of them")
    .action(async (folder: string, options: DisposeOptions) => {
      settle(await disposeCommand(folder, options, console));
    });
};
