import type { IndexEntry } from "./index-entry.ts";
import type { LedgerLine, PageLine, TagLine } from "./ledger-line.ts";

/** What became of a loop since its last record, by the ledger. */
export type TagLife = {
  /** No longer in use: since which day, and why. */
  outOfUse?: { since: string; why: string };
  /** Another sensor was put there, so that its last record proves nothing of it any more. */
  exchangedOn?: string;
  /** Where it is now. */
  place?: string;
};

/** Where a page stands in time: its line, and the day of the work. */
type Placed = { tag: string; number: number; performedOn: string | null };

/** The lines of a ledger that are about tags. */
export function tagLinesOf(lines: readonly LedgerLine[]): readonly TagLine[] {
  return lines.filter((line): line is TagLine => tagActions.includes(line.action));
}

const tagActions: readonly LedgerLine["action"][] = ["retired", "renamed", "relocated", "transferred"];

/**
 * The name that a loop has now: renamings are followed in the order of the ledger.
 *
 * @param placed a page, or a line about a tag. What was filed before a renaming, or done up to its day, is of the loop
 *   that was renamed; what was done later under the old name is of another loop, which got that name.
 */
export function presentTag({ tag, number, performedOn }: Placed, lines: readonly TagLine[]): string {
  return lines.reduce((name, line) => {
    if (line.action !== "renamed" || line.tag !== name) return name;
    const isBefore = number < line.number || (performedOn !== null && performedOn <= dayOf(line));
    return isBefore ? line.to : name;
  }, tag);
}

/** Entries under the names that their loops have now; one that was filed under another keeps that beside it. */
export function underPresentTags(entries: readonly IndexEntry[], lines: readonly TagLine[]): readonly IndexEntry[] {
  if (!lines.some(({ action }) => action === "renamed")) return entries;
  return entries.map((entry) => {
    const { tag, performedOn } = entry.summary;
    const now = presentTag({ tag, number: entry.number, performedOn }, lines);
    return now === tag ? entry : { ...entry, filedAs: tag, summary: { ...entry.summary, tag: now } };
  });
}

/**
 * What the ledger says of the loop since its last record; a record of work that was done later ends it.
 *
 * @param last the last record of the loop, under its present name
 */
export function lifeOf(last: IndexEntry, lines: readonly TagLine[]): TagLife {
  const life: TagLife = {};
  for (const line of lines.filter((one) => isSince(one, last))) {
    const { tag } = last.summary;
    const about = presentTag({ tag: line.tag, number: line.number, performedOn: null }, lines);
    if (line.action === "transferred" && presentTag({ ...line, tag: line.to, performedOn: null }, lines) === tag) {
      life.exchangedOn = dayOf(line);
      delete life.outOfUse;
    }
    if (about !== tag) continue;
    if (line.action === "relocated") life.place = line.place;
    if (line.action === "retired") life.outOfUse = { since: dayOf(line), why: line.reason };
    if (line.action === "transferred") {
      life.outOfUse = { since: dayOf(line), why: `its sensor was put on ${line.to}: ${line.reason}` };
    }
  }
  return life;
}

/** By the day of the work, for a record may be filed late; by the order of the ledger where no day is stated. */
function isSince(line: TagLine, { number, summary: { performedOn } }: IndexEntry): boolean {
  return performedOn === null ? line.number > number : performedOn <= dayOf(line);
}

function dayOf({ at }: TagLine): string {
  return at.slice(0, "2026-11-25".length);
}

/** Lines about pages of a calibration of a loop, by its present name; or by the name under which they were filed. */
export function linesOfCalibration<Line extends PageLine>(
  lines: readonly Line[],
  { tag, calibration }: { tag: string; calibration: string },
  tagLines: readonly TagLine[],
): readonly Line[] {
  const ofCalibration = lines.filter((line) => line.calibration === calibration);
  const now = ofCalibration.filter((line) => presentTag({ ...line, performedOn: null }, tagLines) === tag);
  return now.length > 0 ? now : ofCalibration.filter((line) => line.tag === tag);
}
