import { CannotFile } from "./cannot-file.ts";
import { pagesOf } from "./filed-lines.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import { isFinding } from "./finding.ts";
import type { IndexEntry } from "./index-entry.ts";
import { currentRecordsByTag } from "./latest-records.ts";
import type { DisposedLine } from "./ledger-line.ts";
import type { FilingIndex } from "./read-index.ts";
import { lifeOf } from "./tag-lives.ts";
import { aboutPage } from "./withdraw-page.ts";

/** Pages of work before a day are disposed of; by whom, and by which rule. */
export type Disposal = { before: string; by: string; reason: string };
type Held = Pick<FilingIndex, "entries" | "decisions" | "tagLines">;

/**
 * Which pages may go: those of work before a day, but not the last record of a loop in use, nor a finding of which nobody
 * has entered what was decided. A calibration goes with all of its revisions or not at all.
 */
export function pagesToDispose({ entries, decisions, tagLines }: Held, before: string): ReadonlySet<number> {
  const decided = new Set(decisions.map(({ fileSha256 }) => fileSha256));
  const going = [...currentRecordsByTag(entries).values()].flatMap((ofTag) => {
    const last = ofTag.at(-1);
    const isOutOfUse = last !== undefined && lifeOf(last, tagLines).outOfUse !== undefined;
    return ofTag.filter(
      (entry) => (isOutOfUse || entry !== last) && isBefore(entry, before) && !isOpen(entry, decided),
    );
  });
  const calibrations = new Set(going.map(calibrationOf));
  return new Set(entries.filter((entry) => calibrations.has(calibrationOf(entry))).map(({ number }) => number));
}

function isBefore({ summary: { performedOn } }: IndexEntry, day: string): boolean {
  return performedOn !== null && performedOn < day;
}

function isOpen({ summary, fileSha256, impactDecision }: IndexEntry, decided: ReadonlySet<string>): boolean {
  const asFound = summary.asFound?.statement ?? null;
  return asFound !== null && isFinding(asFound) && impactDecision === undefined && !decided.has(fileSha256);
}

function calibrationOf({ summary: { tag, calibration }, filedAs = tag }: IndexEntry): string {
  return JSON.stringify([filedAs, calibration]);
}

/** The day of the work stands in the name of every filed page, and nothing else tells it of a withdrawn one. */
function isNamedBefore({ path }: { path: string }, day: string): boolean {
  const named = /\/(?<day>\d{4}-\d\d-\d\d)_/u.exec(path)?.groups?.day;
  return named !== undefined && named < day;
}

/** The page, and what `pdf` makes of it and `report` puts beside it: copies of the same record. */
const endings = [".html", ".pdf", ".json"] as const;

/**
 * Disposes of pages, withdrawn ones of the same age too: the ledger's line first, then the page and its copies beside it,
 * so that a page that is gone always has its line; what an earlier disposal left behind goes too.
 *
 * @param numbers of the lines that filed them
 * @returns the lines that were entered, and paths of pages and copies that an earlier line had disposed of
 * @throws CannotFile where there is nothing to dispose of
 */
export async function disposePages(
  folder: FilingFolder,
  numbers: ReadonlySet<number>,
  { before, by, reason }: Disposal,
): Promise<{ lines: readonly DisposedLine[]; leftOvers: readonly string[] }> {
  const { disk, path: root } = folder;
  return changeFolder(folder, async (enter) => {
    const { standing, withdrawn, disposed } = pagesOf(folder.ledger.lines);
    const there = new Set(await disk.filesBelow(root));
    const leftOvers = disposed.flatMap(withCopies).filter((path) => there.has(path));
    const old = withdrawn.filter((line) => isNamedBefore(line, before));
    const pages = [...standing.filter(({ number }) => numbers.has(number)), ...old];
    if (pages.length === 0 && leftOvers.length === 0) throw new CannotFile("filing/nothing-to-dispose-of", { before });
    for (const path of leftOvers) await disk.remove(`${root}/${path}`);
    const lines: DisposedLine[] = [];
    for (const page of pages) {
      lines.push(await enter<DisposedLine>({ ...aboutPage(page), action: "disposed", by, reason }));
      for (const path of withCopies(page)) await disk.remove(`${root}/${path}`);
    }
    return { lines, leftOvers };
  });
}

function withCopies({ path }: { path: string }): readonly string[] {
  return endings.map((ending) => path.replace(/\.html$/u, ending));
}
