import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";

export type DecideOptions = { decision: string; by: string };

/** `spanwright decide`: what was decided about a loop found out of tolerance, into the ledger. */
export async function decideCommand(
  [folder, tag, calibration]: readonly [folder: string, tag: string, calibration: string],
  { decision, by }: DecideOptions,
  console: Console,
): Promise<0 | 2> {
  const { decideFiledFinding } = await import("../../jobs/filing/decide-filed-finding.ts");
  const decided = { tag, calibration, decision, by };
  const { says, problems } = await decideFiledFinding(nodeFilingDisk(console.complain), folder, decided);
  complainOf(problems, console);
  if (says === undefined) return 2;
  console.print(says);
  return 0;
}

export const addDecideCommand: AddCommand = (program, console, settle) => {
  program
    .command("decide")
    .description("enter what was decided about a filed loop that was found out of tolerance")
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag")
    .argument("<calibration>", "number of the calibration")
    .requiredOption("--decision <text>", "what was decided, also 'no impact, because …'")
    .requiredOption("--by <name>", "who decided")
    .action(async (folder: string, tag: string, calibration: string, options: DecideOptions) => {
      settle(await decideCommand([folder, tag, calibration], options, console));
    });
};
