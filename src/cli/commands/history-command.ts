import { dirname, join, relative, sep } from "node:path";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";
import { nodeFilingDisk } from "../node-filing-disk.ts";
import { jsonOption, printJson } from "../print-json.ts";
import { alignedTable } from "../print-table.ts";

/** The options of `spanwright history` as the command line gives them. */
export type HistoryOptions = {
  tag: string;
  out?: string;
  extendWithin?: string;
  extendAfter?: string;
  extendBy?: string;
  shortenConditionalBy?: string;
  shortenBy?: string;
  fullInterval?: string;
  leastMonths?: string;
  mostMonths?: string;
  decimalMark?: string;
  json?: boolean;
};

/** `spanwright history`: a tag over its filed records, in the terminal and as a page where one is asked for. */
export async function historyCommand(folder: string, options: HistoryOptions, console: Console): Promise<0 | 2> {
  const { writeHistory } = await import("../../jobs/filing/write-history.ts");
  const { historyLines, historyRows } = await import("../../jobs/filing/history-rows.ts");
  const { tag, out, decimalMark, json, ...settings } = options;
  const disks = { filing: nodeFilingDisk(console.complain), plain: nodeDisk };
  const { history, problems } = await writeHistory(disks, folder, {
    ...{ tag, out, settings, decimalMark },
    linkTo: linkTo(folder, out),
  });
  if (json) {
    printJson(console, "history", { ...history }, [problems]);
    return problems.hasStop ? 2 : 0;
  }
  complainOf(problems, console);
  if (history !== undefined) {
    console.print(alignedTable(historyRows(history)));
    console.print(historyLines(history).join("\n"));
    if (out !== undefined && !problems.hasStop) console.print(out);
  }
  return problems.hasStop ? 2 : 0;
}

/** A relative address, so that page and folder may be moved together. */
function linkTo(folder: string, out: string | undefined): ((path: string) => string) | undefined {
  if (out === undefined) return undefined;
  return (path) => relative(dirname(out), join(folder, path)).split(sep).map(encodeURIComponent).join("/");
}

export const addHistoryCommand: AddCommand = (program, console, settle) => {
  program
    .command("history")
    .description("show a tag over its filed records: drift, forecast, proposed intervals, reliability")
    .argument("<folder>", "folder into which records are filed")
    .requiredOption("--tag <tag>", "the tag")
    .option(...jsonOption)
    .option("--out <page.html>", "write it as a page too")
    .option(
      "--extend-within <percent>",
      "of the tolerance: a longer interval only where every mean error lies within (80)",
    )
    .option("--extend-after <count>", "of such results in a row (2)")
    .option("--extend-by <factor>", "on the interval, where it is extended (1.25)")
    .option("--shorten-conditional-by <factor>", "after a conditional pass (0.8)")
    .option("--shorten-by <factor>", "after a result out of tolerance (0.5)")
    .option("--full-interval <percent>", "of the interval that has to have passed before it is extended (90)")
    .option("--least-months <months>", "shortest interval that is proposed (1)")
    .option("--most-months <months>", "longest interval that is proposed (36)")
    .option("--decimal-mark <point or comma>", "of what is shown, over that of the last record")
    .action(async (folder: string, options: HistoryOptions) => {
      settle(await historyCommand(folder, options, console));
    });
};
