import type { FilingDisk } from "../../filing/filing-disk.ts";
import { isFilingFolder } from "../../filing/is-filing-folder.ts";
import { ledgerName } from "../../filing/ledger.ts";
import type { ProblemList } from "../../problems/problem-list.ts";

/** Options that need words, with what is accepted: an empty one is a problem; so is a folder without a ledger. */
export async function checkWordsGiven(
  { disk, folder }: { disk: FilingDisk; folder: string },
  words: readonly { option: string; text: string; accepted: string }[],
  problems: ProblemList,
): Promise<void> {
  for (const { option, text, accepted } of words) {
    if (text.trim() === "")
      problems.add("filing/words-missing", { file: "command line" }, { values: { option, accepted } });
  }
  if (!(await isFilingFolder(disk, folder)))
    problems.add("options/not-a-filing-folder", { file: folder }, { values: { ledger: ledgerName } });
}
