import type { FilingDisk } from "../../filing/filing-disk.ts";
import { isFilingFolder } from "../../filing/is-filing-folder.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { type FilingIndex, readIndex } from "../../filing/read-index.ts";
import type { ProblemList } from "../../problems/problem-list.ts";

/**
 * What lies in a filing folder, in short; nothing, and problems, where there is no such folder, and where one page in it
 * cannot be read: what is not known would be left out without a word.
 */
export async function openFolder(
  disk: FilingDisk,
  folder: string,
  problems: ProblemList,
  on?: string,
): Promise<FilingIndex | undefined> {
  if (!(await requireFilingFolder(disk, folder, problems))) return undefined;
  const index = await readIndex(disk, folder, on);
  for (const { place, says } of index.doubts)
    problems.add("options/filed-page", { file: `${folder}/${place}` }, { values: { says } });
  return index.doubts.length === 0 ? index : undefined;
}

/** Whether records were filed into a folder; a problem where there is no such folder, or no ledger in it. */
export async function requireFilingFolder(
  disk: Pick<FilingDisk, "namesIn">,
  folder: string,
  problems: ProblemList,
): Promise<boolean> {
  if (await isFilingFolder(disk, folder)) return true;
  const what = (await disk.namesIn(folder)) === undefined ? "such folder" : `${ledgerName} in it`;
  problems.add("options/not-a-filing-folder", { file: folder }, { values: { what } });
  return false;
}
