import type { IndexEntry } from "./index-entry.ts";
import type { FiledLine, LedgerLine, TagLine } from "./ledger-line.ts";
import { presentTag, tagLinesOf } from "./tag-lives.ts";

/** One thing that was done in a filing folder, in words; a name that the ledger does not have is left out. */
export type TrailRow = {
  number: number;
  /** Date and time with offset. */
  at: string;
  /** "filed", "withdrawn", "renamed" … */
  action: LedgerLine["action"];
  /** The tag as it was then; nothing where the line is about the folder. */
  tag?: string;
  calibration?: string;
  revision?: number;
  by?: string;
  /** Who signed the page that was filed and what for; what was decided; why; where to. */
  says: string;
};

/**
 * Everything that was done in a filing folder, in the order of its ledger: who, what, when.
 *
 * @param lines of the ledger
 * @param entries of the pages that stand, for who signed them
 * @param tag of one loop alone, under every name that it had; of all where left out
 * @returns one row a line of the ledger
 */
export function trailOf(lines: readonly LedgerLine[], entries: readonly IndexEntry[], tag?: string): TrailRow[] {
  const signed = new Map(entries.map(({ number, signedBy = [] }) => [number, signedBy]));
  const rows = lines.map((line) => rowOf(line, signed));
  if (tag === undefined) return rows;
  const tagLines = tagLinesOf(lines);
  return rows.filter((_, index) => isAbout(lines[index], tag, tagLines));
}

function rowOf(line: LedgerLine, signed: ReadonlyMap<number, readonly string[]>): TrailRow {
  const { number, at, action } = line;
  return {
    ...{ number, at, action },
    ...("tag" in line && { tag: line.tag }),
    ...("path" in line && { calibration: line.calibration, revision: line.revision }),
    ...("by" in line && line.by !== undefined && { by: line.by }),
    says: wordsOf(line, signed),
  };
}

function wordsOf(line: LedgerLine, signed: ReadonlyMap<number, readonly string[]>): string {
  switch (line.action) {
    case "filed":
      return filedWords(line, signed.get(line.number));
    case "decided":
      return line.decision;
    case "renamed":
      return `to ${line.to}: ${line.reason}`;
    case "relocated":
      return `to ${line.place}: ${line.reason}`;
    case "transferred":
      return `its sensor to ${line.to}: ${line.reason}`;
    case "indexed":
      return `the index made anew from ${line.rows} pages`;
    default:
      return line.reason;
  }
}

/** A page that was withdrawn or disposed of has no entry: who signed it, only the page knows. */
function filedWords({ paper }: FiledLine, signedBy: readonly string[] | undefined): string {
  const onPaper = paper === undefined ? [] : [`signatures on paper: ${paper}`];
  if (signedBy === undefined) return ["counts no more", ...onPaper].join("; ");
  if (signedBy.length === 0) return onPaper[0] ?? "not signed";
  return [`signed by ${signedBy.join(", ")}`, ...onPaper].join("; ");
}

/** Under its present name or one that it had, or as the loop that a sensor went to. */
function isAbout(line: LedgerLine | undefined, tag: string, tagLines: readonly TagLine[]): boolean {
  if (line === undefined || !("tag" in line)) return false;
  const named = "to" in line ? [line.tag, line.to] : [line.tag];
  return named.some((name) => name === tag || presentTag({ ...line, tag: name, performedOn: null }, tagLines) === tag);
}
