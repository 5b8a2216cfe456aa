import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import type { FiledLine, WithdrawnLine } from "./ledger-line.ts";

/** Which filed page counts no more, who says so, and why. */
export type Withdrawal = { tag: string; calibration: string; revision: number; by: string; reason: string };

/**
 * Enters that a filed page counts no more: it is in no register, no history and no due list, and its place is free for
 * the page that should have been filed. The page stays where it lies, and the ledger keeps both lines.
 *
 * @throws CannotFile where no such revision counts, and where a later one rests on it
 */
export async function withdrawPage(folder: FilingFolder, withdrawal: Withdrawal): Promise<WithdrawnLine> {
  const { tag, calibration, revision, by, reason } = withdrawal;
  return changeFolder(folder, async (enter) => {
    const ofCalibration = pagesOf(folder.ledger.lines).standing.filter(
      (line) => line.tag === tag && line.calibration === calibration,
    );
    const filed = ofCalibration.find((line) => line.revision === revision);
    if (filed === undefined) throw new CannotFile("filing/revision-unknown", { tag, calibration, revision });
    checkLast(ofCalibration, revision);
    const { path, fileSha256, sealSha256 } = filed;
    const about = { path, fileSha256, sealSha256, tag, calibration, revision };
    return enter<WithdrawnLine>({ ...about, action: "withdrawn", by, reason });
  });
}

function checkLast(ofCalibration: readonly FiledLine[], revision: number): void {
  const later = ofCalibration.find((line) => line.revision > revision);
  if (later !== undefined) throw new CannotFile("filing/rested-upon", { revision, later: later.revision });
}
