import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";

type Words = { reason: string; by: string };
type TagChange = Parameters<typeof import("../../jobs/filing/change-filed-tag.ts").changeFiledTag>[2]["change"];

/** `spanwright retire`, `rename` and `move`: what became of a loop, as a line of the ledger. */
export async function tagCommand(
  [folder, tag]: readonly [folder: string, tag: string],
  { reason, by }: Words,
  change: TagChange,
  console: Console,
): Promise<0 | 2> {
  const { changeFiledTag } = await import("../../jobs/filing/change-filed-tag.ts");
  const asked = { tag, reason, by, change };
  const { says, problems } = await changeFiledTag(nodeFilingDisk(console.complain), folder, asked);
  complainOf(problems, console);
  if (says === undefined) return 2;
  console.print(says);
  return 0;
}

export const addRetireCommand: AddCommand = (program, console, settle) => {
  program
    .command("retire")
    .description("enter that a loop is out of use: it is due no more, until a record of later work is filed")
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag")
    .requiredOption("--reason <text>", "why")
    .requiredOption("--by <name>", "who enters it")
    .action(async (folder: string, tag: string, words: Words) => {
      settle(await tagCommand([folder, tag], words, { action: "retired" }, console));
    });
};

export const addRenameCommand: AddCommand = (program, console, settle) => {
  program
    .command("rename")
    .description(
      "enter that a loop is called otherwise; where the new tag has records too, both are one loop from now on",
    )
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag until now")
    .argument("<new-tag>", "its tag from now on")
    .requiredOption("--reason <text>", "why")
    .requiredOption("--by <name>", "who enters it")
    .action(async (folder: string, tag: string, to: string, words: Words) => {
      settle(await tagCommand([folder, tag], words, { action: "renamed", to }, console));
    });
};

export const addMoveCommand: AddCommand = (program, console, settle) => {
  program
    .command("move")
    .description("enter that a loop was moved to another place, or that its sensor was put on another loop")
    .argument("<folder>", "the folder that keeps the records")
    .argument("<tag>", "the loop's tag")
    .option("--to <place>", "where the loop is now")
    .option("--onto <tag>", "the loop on which its sensor is now, which is then to be calibrated")
    .requiredOption("--reason <text>", "why")
    .requiredOption("--by <name>", "who enters it")
    .action(async (folder: string, tag: string, { to, onto, ...words }: Words & { to?: string; onto?: string }) => {
      if ((to === undefined) === (onto === undefined)) {
        console.complain("error: one of the options --to <place> and --onto <tag> is needed, and not both");
        return settle(2);
      }
      const change =
        to === undefined
          ? ({ action: "transferred", to: onto ?? "" } as const)
          : ({ action: "relocated", place: to } as const);
      settle(await tagCommand([folder, tag], words, change, console));
    });
};
