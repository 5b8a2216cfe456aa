import { phaseStatement } from "../record/phase-statement.ts";
import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import { isFinding } from "./finding.ts";
import type { DecidedLine, FiledLine } from "./ledger-line.ts";
import { readFiledRecord } from "./read-filed-record.ts";
import { linesOfCalibration, tagLinesOf } from "./tag-lives.ts";
import { aboutPage } from "./withdraw-page.ts";

/** What was decided about a finding, by whom. */
export type FindingDecision = { tag: string; calibration: string; decision: string; by: string };

/** Enters what was decided about a loop that was found out of tolerance; what was decided before stays there. */
export async function decideFinding(folder: FilingFolder, decided: FindingDecision): Promise<DecidedLine> {
  const { decision, by } = decided;
  return changeFolder(folder, async (enter) => {
    const filed = lastRevision(folder, decided);
    if (!(await isOutOfTolerance(folder, filed)))
      throw new CannotFile("filing/nothing-to-decide", { path: filed.path });
    return enter<DecidedLine>({ ...aboutPage(filed), action: "decided", decision, by });
  });
}

function lastRevision({ ledger }: FilingFolder, { tag, calibration }: FindingDecision): FiledLine {
  const found = linesOfCalibration(pagesOf(ledger.lines).standing, { tag, calibration }, tagLinesOf(ledger.lines));
  const last = found.toSorted((one, other) => one.revision - other.revision).at(-1);
  if (last === undefined) throw new CannotFile("filing/record-unknown", { tag, calibration });
  return last;
}

async function isOutOfTolerance({ disk, path: root }: FilingFolder, filed: FiledLine): Promise<boolean> {
  const found = await readFiledRecord(disk, root, filed);
  if ("says" in found) throw new CannotFile("filing/page-unreadable", { path: filed.path, says: found.says });
  return isFinding(phaseStatement(found.record, "asFound"));
}
