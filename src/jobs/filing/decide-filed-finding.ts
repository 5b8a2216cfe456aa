import { CannotFile } from "../../filing/cannot-file.ts";
import { decideFinding, type FindingDecision } from "../../filing/decide-finding.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { filingFolder } from "../../filing/filing-folder.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import { requireFilingFolder } from "./open-folder.ts";

/** What was entered, as a sentence; nothing, and problems, where it could not be. */
export type FindingDecided = { says: string | undefined; problems: ProblemList };

/** Enters into the ledger of a folder what was decided about a loop that was found out of tolerance. */
export async function decideFiledFinding(
  disk: FilingDisk,
  folder: string,
  decided: FindingDecision,
): Promise<FindingDecided> {
  const problems = new ProblemList();
  const place = { file: "command line" };
  const words = [
    { option: "--decision", text: decided.decision, accepted: "what was decided, also 'no impact, because …'" },
    { option: "--by", text: decided.by, accepted: "the name of whoever decided" },
  ];
  for (const { option, text, accepted } of words) {
    if (text.trim() === "") problems.add("filing/words-missing", place, { values: { option, accepted } });
  }
  await requireFilingFolder(disk, folder, problems);
  if (problems.hasStop) return { says: undefined, problems };
  try {
    const { number, revision } = await decideFinding(filingFolder(disk, folder), decided);
    const { tag, calibration } = decided;
    return {
      says: `line ${number} of the ledger: decided about ${tag}, ${calibration}, revision ${revision}`,
      problems,
    };
  } catch (fault) {
    if (!(fault instanceof CannotFile)) throw fault;
    problems.add(fault.code, { file: folder }, { values: fault.values });
    return { says: undefined, problems };
  }
}
