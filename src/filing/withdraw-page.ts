import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import type { FiledLine, PageLine, RestoredLine, WithdrawnLine } from "./ledger-line.ts";
import { linesOfCalibration, tagLinesOf } from "./tag-lives.ts";

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
    const { lines } = folder.ledger;
    const ofCalibration = linesOfCalibration(pagesOf(lines).standing, withdrawal, tagLinesOf(lines));
    const filed = ofCalibration.find((line) => line.revision === revision);
    if (filed === undefined) throw new CannotFile("filing/revision-unknown", { tag, calibration, revision });
    checkLast(ofCalibration, revision);
    return enter<WithdrawnLine>({ ...aboutPage(filed), action: "withdrawn", by, reason });
  });
}

/**
 * Enters that a page that was withdrawn counts again.
 *
 * @throws CannotFile where no such page was withdrawn, and where another has its place now
 */
export async function restorePage(folder: FilingFolder, asked: Withdrawal): Promise<RestoredLine> {
  const { tag, calibration, revision, by, reason } = asked;
  return changeFolder(folder, async (enter) => {
    const { lines } = folder.ledger;
    const { standing, withdrawn } = pagesOf(lines);
    const ofCalibration = linesOfCalibration(withdrawn, asked, tagLinesOf(lines));
    const last = ofCalibration.findLast((line) => line.revision === revision);
    if (last === undefined) throw new CannotFile("filing/nothing-withdrawn", { tag, calibration, revision });
    const isSame = (line: FiledLine) => line.tag === last.tag && line.calibration === calibration;
    const taken = standing.find((line) => isSame(line) && line.revision === revision);
    if (taken !== undefined) throw new CannotFile("filing/issued-already", { path: taken.path });
    return enter<RestoredLine>({ ...aboutPage(last), action: "restored", by, reason });
  });
}

/** What a line says of the page that it is about. */
export function aboutPage({ path, fileSha256, sealSha256, tag, calibration, revision }: PageLine) {
  return { path, fileSha256, sealSha256, tag, calibration, revision };
}

function checkLast(ofCalibration: readonly FiledLine[], revision: number): void {
  const later = ofCalibration.find((line) => line.revision > revision);
  if (later !== undefined) throw new CannotFile("filing/rested-upon", { revision, later: later.revision });
}
