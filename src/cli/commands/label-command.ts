import { ProblemList } from "../../problems/problem-list.ts";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { meantRecords } from "../meant-records.ts";
import { nodeDisk } from "../node-disk.ts";

/** The options of `spanwright label` as the command line gives them. */
export type LabelOptions = { out: string; single?: true; skip: string };

/** `spanwright label`: one page of labels for the loops of some records. */
export async function labelCommand(
  files: readonly string[],
  { out, single, skip }: LabelOptions,
  console: Console,
): Promise<0 | 2> {
  const { makeLabels } = await import("../../jobs/records/make-labels.ts");
  const problems = new ProblemList();
  if (!/^(?:\d|1\d|2[0-3])$/u.test(skip)) {
    const accepted = "--skip with a whole number from 0 to 23";
    problems.add(
      "options/not-understood",
      { file: "command line" },
      { read: skip, values: { option: "--skip", accepted } },
    );
  }
  const form = { isSheet: single !== true, skipped: Number(skip), out };
  const paths = problems.hasStop ? [] : await meantRecords(files, problems, console);
  const count = problems.hasStop ? 0 : await makeLabels(nodeDisk, paths, form, problems);
  complainOf(problems, console);
  if (count > 0) console.print(`${counted(count, "label")}: ${out}`);
  return problems.hasStop ? 2 : 0;
}

export const addLabelCommand: AddCommand = (program, console, settle) => {
  program
    .command("label")
    .description("write labels for loops, 70 × 37 mm, as a page to print")
    .argument("<records...>", "pages of records, their .json files, folders of them, or a quoted pattern")
    .option("--out <file>", "page to write", "labels.html")
    .option("--single", "one label a page, for a printer that takes a roll, instead of A4 sheets of 24")
    .option("--skip <number>", "places of the first sheet that are used up", "0")
    .action(async (files: string[], options: LabelOptions) => {
      settle(await labelCommand(files, options, console));
    });
};
