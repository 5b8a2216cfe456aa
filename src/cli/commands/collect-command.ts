import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

/** `spanwright collect`: what came back from entry sheets, into the tables of a workbook. */
export async function collectCommand(
  sources: readonly string[],
  { into }: { into: string },
  console: Console,
): Promise<0 | 2> {
  const { collectTables } = await import("../../jobs/collect/collect-tables.ts");
  const problems = new ProblemList();
  const collected = await collectTables(nodeDisk, sources, into, problems);
  complainOf(problems, console);
  for (const { path, added, filled, same } of collected) {
    console.print(`${path}: ${counted(added, "row")} taken in, ${filled} filled up, ${same} there already`);
  }
  if (problems.hasStop) return 2;
  console.print(`next: spanwright check ${into}`);
  return 0;
}

/** Adds `collect` to the program. */
export const addCollectCommand: AddCommand = (program, console, settle) => {
  program
    .command("collect")
    .description("take what came back from entry sheets into the tables of a workbook, nothing twice or over another")
    .argument("<sources...>", ".zip files of sheets, folders of tables, or single tables")
    .requiredOption("--into <folder>", "folder of the workbook's .csv tables; a new one is made")
    .action(async (sources: readonly string[], options: { into: string }) => {
      settle(await collectCommand(sources, options, console));
    });
};
