import { CannotFile } from "../../filing/cannot-file.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { filingFolder } from "../../filing/filing-folder.ts";
import { isFilingFolder } from "../../filing/is-filing-folder.ts";
import { ledgerName } from "../../filing/ledger.ts";
import { type Withdrawal, withdrawPage } from "../../filing/withdraw-page.ts";
import { ProblemList } from "../../problems/problem-list.ts";

/** What was entered, as a sentence; nothing, and problems, where it could not be. */
export type PageWithdrawn = { says: string | undefined; problems: ProblemList };

/** Enters into the ledger of a folder that a filed page counts no more. */
export async function withdrawFiledPage(
  disk: FilingDisk,
  folder: string,
  { revision: written, ...asked }: Omit<Withdrawal, "revision"> & { revision: string },
): Promise<PageWithdrawn> {
  const problems = new ProblemList();
  const place = { file: "command line" };
  const revision = /^[1-9]\d{0,5}$/u.test(written.trim()) ? Number(written) : undefined;
  if (revision === undefined) {
    const accepted = "--revision with the number of the revision, such as 1";
    problems.add("options/not-understood", place, { read: written, values: { option: "--revision", accepted } });
  }
  const words = [
    { option: "--reason", text: asked.reason, accepted: "why the page counts no more" },
    { option: "--by", text: asked.by, accepted: "the name of whoever withdraws it" },
  ];
  for (const { option, text, accepted } of words) {
    if (text.trim() === "") problems.add("filing/words-missing", place, { values: { option, accepted } });
  }
  if (!(await isFilingFolder(disk, folder)))
    problems.add("options/not-a-filing-folder", { file: folder }, { values: { ledger: ledgerName } });
  if (problems.hasStop || revision === undefined) return { says: undefined, problems };
  try {
    const { number, path } = await withdrawPage(filingFolder(disk, folder), { ...asked, revision });
    return { says: `line ${number} of the ledger: ${path} counts no more; it stays where it lies`, problems };
  } catch (fault) {
    if (!(fault instanceof CannotFile)) throw fault;
    problems.add(fault.code, { file: folder }, { values: fault.values });
    return { says: undefined, problems };
  }
}
