import { type Console, complainOf } from "./console.ts";
import { nodeDisk } from "./node-disk.ts";

/** The options of `spanwright loop-checks`. */
export type LoopChecksOptions = { tag?: string; guide?: true };

/** `spanwright loop-checks`: the items of a loop check that apply to the tags of a workbook; writes nothing. */
export async function loopChecksCommand(
  workbook: string,
  { tag, guide }: LoopChecksOptions,
  console: Console,
): Promise<0 | 2> {
  const { loopCheckSheet } = await import("../jobs/loop-check-sheet.ts");
  const options = { today: console.today(), tag, asGuide: guide === true };
  const { text, problems } = await loopCheckSheet(nodeDisk, workbook, options);
  complainOf(problems, console);
  if (problems.hasStop) return 2;
  console.print(text);
  return 0;
}
