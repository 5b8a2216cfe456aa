import { CannotFile } from "../../filing/cannot-file.ts";
import { type Disposal, disposePages, pagesToDispose } from "../../filing/dispose-pages.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { filingFolder } from "../../filing/filing-folder.ts";
import { isDay } from "../../model/is-day.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { openFolder } from "./open-folder.ts";
import { checkWordsGiven } from "./words-given.ts";

/** Disposes of the pages of a folder that were kept long enough; a path a line, or problems. */
export async function disposeFiledPages(
  disk: FilingDisk,
  folder: string,
  disposal: Disposal,
): Promise<{ says: readonly string[]; problems: ProblemList }> {
  const problems = new ProblemList();
  const words = [
    { option: "--reason", text: disposal.reason, accepted: "the rule by which they are kept no longer" },
    { option: "--by", text: disposal.by, accepted: "the name of whoever disposes of them" },
  ];
  await checkWordsGiven({ disk, folder }, words, problems);
  if (!isDay(disposal.before)) {
    const values = { option: "--before", accepted: "--before with a day, such as 2016-01-01" };
    problems.add("options/not-understood", { file: "command line" }, { read: disposal.before, values });
  }
  const index = problems.hasStop ? undefined : await openFolder(disk, folder, problems);
  if (index === undefined) return { says: [], problems };
  try {
    const numbers = pagesToDispose(index, disposal.before);
    const { lines, leftOvers } = await disposePages(filingFolder(disk, folder), numbers, disposal);
    const says = [
      ...leftOvers.map((path) => `${path}: disposed of before, and gone now`),
      ...lines.map(({ number, path }) => `line ${number} of the ledger: ${path} is disposed of`),
    ];
    return { says, problems };
  } catch (fault) {
    if (!(fault instanceof CannotFile)) throw fault;
    problems.add(fault.code, { file: folder }, { values: fault.values });
    return { says: [], problems };
  }
}
