import { ProblemList } from "../../problems/problem-list.ts";
import type { AddCommand } from "../command.ts";
import { type Console, complainOf } from "../console.ts";
import { nodeDisk } from "../node-disk.ts";

export type ExtractOptions = { out: string };

/** `spanwright extract`: the tables that a record was made of. */
export async function extractCommand(record: string, { out }: ExtractOptions, console: Console): Promise<0 | 2> {
  const { extractWorkbook } = await import("../../jobs/records/extract-workbook.ts");
  const problems = new ProblemList();
  const extracted = await extractWorkbook(nodeDisk, record, out, problems);
  complainOf(problems, console);
  if (extracted === undefined || problems.hasStop) return 2;
  const { files, options, hasHistory } = extracted;
  for (const file of files) console.print(file);
  const [only] = files;
  const workbook = files.length === 1 && only !== undefined ? only : out;
  const words = [
    "spanwright report",
    workbook,
    ...options,
    ...(hasHistory ? ["--filed <folder>"] : []),
    "--out <folder>",
  ];
  console.print(`the same figures: ${words.join(" ")}`);
  return 0;
}

export const addExtractCommand: AddCommand = (program, console, settle) => {
  program
    .command("extract")
    .description("write the tables that a record was made of, each cell as it was typed")
    .argument("<record>", "page of a record, or its .json file")
    .requiredOption("--out <folder>", "new or empty folder for the tables")
    .action(async (record: string, options: ExtractOptions) => {
      settle(await extractCommand(record, options, console));
    });
};
