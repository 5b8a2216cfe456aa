import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";
import { alignedTable } from "../print-table.ts";

export type TrailOptions = { tag?: string; json?: boolean };

/** `spanwright trail`: everything that was done in a filing folder: who, what, when. */
export async function trailCommand(folder: string, { tag, json }: TrailOptions, console: Console): Promise<0 | 2> {
  const { listTrail } = await import("../../jobs/filing/list-trail.ts");
  const { rows, trail, problems } = await listTrail(nodeFilingDisk(console.complain), folder, { tag });
  if (json) {
    printJson(console, "trail", { trail }, [problems]);
    return problems.hasStop ? 2 : 0;
  }
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(trail.length === 0 ? "nothing was done there yet" : alignedTable(rows));
  return 0;
}

export const addTrailCommand: AddCommand = (program, console, settle) => {
  program
    .command("trail")
    .description("list everything that was done in a filing folder: who, what, when, by its ledger")
    .argument("<folder>", "folder into which records are filed")
    .option("--tag <tag>", "one loop alone, under every name that it had")
    .option(...jsonOption)
    .action(async (folder: string, options: TrailOptions) => {
      settle(await trailCommand(folder, options, console));
    });
};
