import type { FilingDisk } from "../../filing/filing-disk.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { requireFilingFolder } from "./open-folder.ts";

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
  await requireFilingFolder(disk, folder, problems);
}
