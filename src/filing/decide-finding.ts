import { phaseStatement } from "../record/phase-statement.ts";
import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import { isFinding } from "./finding.ts";
import type { DecidedLine, FiledLine } from "./ledger-line.ts";
import { readFiledRecord } from "./read-filed-record.ts";

/** What was decided about a finding, by whom. */
export type FindingDecision = { tag: string; calibration: string; decision: string; by: string };

/** Enters what was decided about a loop that was found out of tolerance; what was decided before stays there. */
export async function decideFinding(folder: FilingFolder, decided: FindingDecision): Promise<DecidedLine> {
  const { tag, calibration, decision, by } = decided;
  return changeFolder(folder, async (enter) => {
    const filed = lastRevision(folder, decided);
    if (!(await isOutOfTolerance(folder, filed)))
      throw new CannotFile("filing/nothing-to-decide", { path: filed.path });
    const { path, fileSha256, sealSha256, revision } = filed;
    const about = { path, fileSha256, sealSha256, tag, calibration, revision };
    return enter<DecidedLine>({ ...about, action: "decided", decision, by });
  });
}

function lastRevision({ ledger }: FilingFolder, { tag, calibration }: FindingDecision): FiledLine {
  const found = pagesOf(ledger.lines).standing.filter((line) => line.tag === tag && line.calibration === calibration);
  const last = found.toSorted((one, other) => one.revision - other.revision).at(-1);
  if (last === undefined) throw new CannotFile("filing/record-unknown", { tag, calibration });
  return last;
}

async function isOutOfTolerance({ disk, path: root }: FilingFolder, filed: FiledLine): Promise<boolean> {
  const found = await readFiledRecord(disk, root, filed);
  if ("says" in found) throw new CannotFile("filing/page-unreadable", { path: filed.path, says: found.says });
  return isFinding(phaseStatement(found.record, "asFound"));
}
