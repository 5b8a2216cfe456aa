import { CannotFile } from "../../filing/cannot-file.ts";
import { changeTag, type TagChange } from "../../filing/change-tag.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { filingFolder } from "../../filing/filing-folder.ts";
import type { TagLine } from "../../filing/ledger-line.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { checkWordsGiven } from "./words-given.ts";

export type TagAsked = { tag: string; reason: string; by: string; change: TagChange };

/** Enters what became of a loop; what was entered as a sentence, or problems. */
export async function changeFiledTag(
  disk: FilingDisk,
  folder: string,
  { tag, reason, by, change }: TagAsked,
): Promise<{ says: string | undefined; problems: ProblemList }> {
  const problems = new ProblemList();
  const words = [
    { option: "--reason", text: reason, accepted: "why, in words" },
    { option: "--by", text: by, accepted: "the name of whoever enters it" },
    ...("to" in change ? [{ option: "the other tag", text: change.to, accepted: "a tag" }] : []),
    ...("place" in change ? [{ option: "--to", text: change.place, accepted: "where the loop is now" }] : []),
  ];
  await checkWordsGiven({ disk, folder }, words, problems);
  if (problems.hasStop) return { says: undefined, problems };
  try {
    const line = await changeTag(filingFolder(disk, folder), { tag, reason, by }, change);
    return { says: `line ${line.number} of the ledger: ${saidOf(line)}`, problems };
  } catch (fault) {
    if (!(fault instanceof CannotFile)) throw fault;
    problems.add(fault.code, { file: folder }, { values: fault.values });
    return { says: undefined, problems };
  }
}

function saidOf(line: TagLine): string {
  const { tag } = line;
  if (line.action === "retired") return `${tag} is out of use, until a record of later work is filed`;
  if (line.action === "renamed") return `${tag} is called ${line.to} from now on; its history is that of ${line.to}`;
  if (line.action === "relocated") return `${tag} is at ${line.place} now`;
  return `the sensor of ${tag} is on ${line.to} now: ${tag} is out of use, ${line.to} is to be calibrated`;
}
