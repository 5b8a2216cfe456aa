import { CannotFile } from "../../filing/cannot-file.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { type FilingFolder, filingFolder } from "../../filing/filing-folder.ts";
import type { PageLine } from "../../filing/ledger-line.ts";
import { restorePage, type Withdrawal, withdrawPage } from "../../filing/withdraw-page.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { checkWordsGiven } from "./words-given.ts";

/** What was entered, as a sentence; nothing, and problems, where it could not be. */
export type PageWithdrawn = { says: string | undefined; problems: ProblemList };
type Asked = Omit<Withdrawal, "revision"> & { revision: string };
type Change = {
  enter: (folder: FilingFolder, withdrawal: Withdrawal) => Promise<PageLine>;
  why: string;
  who: string;
  says: (path: string) => string;
};

/** Enters into the ledger of a folder that a filed page counts no more. */
export function withdrawFiledPage(disk: FilingDisk, folder: string, asked: Asked): Promise<PageWithdrawn> {
  return changed(disk, folder, asked, {
    enter: withdrawPage,
    ...{ why: "why the page counts no more", who: "the name of whoever withdraws it" },
    says: (path) => `${path} counts no more; it stays where it lies`,
  });
}

/** Enters that a page that was withdrawn in error counts again. */
export function restoreFiledPage(disk: FilingDisk, folder: string, asked: Asked): Promise<PageWithdrawn> {
  return changed(disk, folder, asked, {
    enter: restorePage,
    ...{ why: "why the page counts again", who: "the name of whoever restores it" },
    says: (path) => `${path} counts again`,
  });
}

async function changed(
  disk: FilingDisk,
  folder: string,
  { revision: written, ...asked }: Asked,
  change: Change,
): Promise<PageWithdrawn> {
  const problems = new ProblemList();
  const revision = /^[1-9]\d{0,5}$/u.test(written.trim()) ? Number(written) : undefined;
  if (revision === undefined) {
    const accepted = "--revision with the number of the revision, such as 1";
    const values = { option: "--revision", accepted };
    problems.add("options/not-understood", { file: "command line" }, { read: written, values });
  }
  const words = [
    { option: "--reason", text: asked.reason, accepted: change.why },
    { option: "--by", text: asked.by, accepted: change.who },
  ];
  await checkWordsGiven({ disk, folder }, words, problems);
  if (problems.hasStop || revision === undefined) return { says: undefined, problems };
  try {
    const { number, path } = await change.enter(filingFolder(disk, folder), { ...asked, revision });
    return { says: `line ${number} of the ledger: ${change.says(path)}`, problems };
  } catch (fault) {
    if (!(fault instanceof CannotFile)) throw fault;
    problems.add(fault.code, { file: folder }, { values: fault.values });
    return { says: undefined, problems };
  }
}
