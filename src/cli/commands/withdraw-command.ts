import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";

export type WithdrawOptions = { revision: string; reason: string; by: string };

/** `spanwright withdraw`: a filed page counts no more; `restore`: it does again. The ledger says by whom and why. */
export async function withdrawCommand(
  [folder, tag, calibration]: readonly [folder: string, tag: string, calibration: string],
  options: WithdrawOptions,
  console: Console,
  isBack = false,
): Promise<0 | 2> {
  const { restoreFiledPage, withdrawFiledPage } = await import("../../jobs/filing/withdraw-filed-page.ts");
  const change = isBack ? restoreFiledPage : withdrawFiledPage;
  const asked = { tag, calibration, ...options };
  const { says, problems } = await change(nodeFilingDisk(console.complain), folder, asked);
  complainOf(problems, console);
  if (says === undefined) return 2;
  console.print(says);
  return 0;
}

export const addWithdrawCommand: AddCommand = (program, console, settle) => {
  program
    .command("withdraw")
    .description("enter that a filed page counts no more; it stays where it lies, and its place is free for another")
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag")
    .argument("<calibration>", "number of the calibration")
    .requiredOption("--revision <number>", "which revision of it")
    .requiredOption("--reason <text>", "why it counts no more")
    .requiredOption("--by <name>", "who withdraws it")
    .action(async (folder: string, tag: string, calibration: string, options: WithdrawOptions) => {
      settle(await withdrawCommand([folder, tag, calibration], options, console));
    });
};

export const addRestoreCommand: AddCommand = (program, console, settle) => {
  program
    .command("restore")
    .description("enter that a page that was withdrawn in error counts again")
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag")
    .argument("<calibration>", "number of the calibration")
    .requiredOption("--revision <number>", "which revision of it")
    .requiredOption("--reason <text>", "why it counts again")
    .requiredOption("--by <name>", "who restores it")
    .action(async (folder: string, tag: string, calibration: string, options: WithdrawOptions) => {
      settle(await withdrawCommand([folder, tag, calibration], options, console, true));
    });
};
