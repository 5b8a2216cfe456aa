import type { Doubt } from "../record/doubt.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { indexName, indexText, readIndexText } from "./filing-index.ts";
import { withFilingLock } from "./filing-lock.ts";
import { type IndexEntry, indexEntry } from "./index-entry.ts";
import { ledgerName } from "./ledger.ts";
import { type DecidedLine, type FiledLine, type LedgerLine, readLedgerLine } from "./ledger-line.ts";
import { readFiledRecord } from "./read-filed-record.ts";
import { textOf } from "./text-of.ts";

/** What lies in a folder, in short. */
export type FilingIndex = {
  /** One a filed page, every revision, in the order of filing. */
  entries: readonly IndexEntry[];
  /** What was decided about loops found out of tolerance, in that order. */
  decisions: readonly DecidedLine[];
  /** Filed pages that cannot be read, or lines that are none: `verify` tells more. Where there is any, nothing can be
   * said of the folder, because what is missing may be what matters. */
  doubts: readonly Doubt[];
};

/**
 * The records of a folder in short, from its index; what the index lacks is made from the pages and added to it.
 *
 * It is quick because it believes the index of a page that was not touched since the index was written, by the disk's
 * own times, and the ledger; whether they may be believed is the business of `verify`. The index is written again only
 * where every page could be read.
 */
export async function readIndex(disk: FilingDisk, folder: string): Promise<FilingIndex> {
  const ledger = await textOrWhy(disk, `${folder}/${ledgerName}`);
  if ("why" in ledger) return { entries: [], decisions: [], doubts: [ledgerDoubt(`it cannot be read: ${ledger.why}`)] };
  const { lines, doubts } = linesOf(ledger.text);
  const [first] = lines;
  if (first === undefined) return { entries: [], decisions: [], doubts };
  const filed = lines.filter((line) => line.action === "filed");
  const known = await entriesKnown(disk, folder, first, filed);
  const entries: IndexEntry[] = [];
  let isBehind = false;
  for (const line of filed) {
    const entry = known.get(line.number);
    if (entry !== undefined) {
      entries.push(entry);
      continue;
    }
    const found = await readFiledRecord(disk, folder, line);
    if ("record" in found) {
      isBehind = true;
      entries.push(indexEntry(line, found.record));
    } else doubts.push({ about: "folder", place: line.path, says: found.says });
  }
  if (isBehind && doubts.length === 0) await renewed(disk, folder, indexText(first, entries));
  return { entries, decisions: lines.filter((line) => line.action === "decided"), doubts };
}

/** As many files as are asked about at once. */
const atOnce = 64;

/** Entries of the index for pages that are there and have not been touched since it was written. */
async function entriesKnown(
  disk: FilingDisk,
  folder: string,
  first: LedgerLine,
  filed: readonly FiledLine[],
): Promise<ReadonlyMap<number, IndexEntry>> {
  const path = `${folder}/${indexName}`;
  const writtenAt = await disk.changedAt(path).catch(() => undefined);
  const index = await textOrWhy(disk, path);
  if (writtenAt === undefined || "why" in index) return new Map();
  const entries = readIndexText(index.text, first);
  const known = new Map<number, IndexEntry>();
  const isKnown = async (line: FiledLine) => {
    const entry = entries.get(line.number);
    if (entry === undefined || !isOf(entry, line)) return;
    const changedAt = await disk.changedAt(`${folder}/${line.path}`).catch(() => undefined);
    if (changedAt !== undefined && changedAt < writtenAt) known.set(line.number, entry);
  };
  for (let start = 0; start < filed.length; start += atOnce) {
    await Promise.all(filed.slice(start, start + atOnce).map(isKnown));
  }
  return known;
}

async function textOrWhy(disk: FilingDisk, path: string): Promise<{ text: string } | { why: string }> {
  try {
    return { text: await textOf(disk, path) };
  } catch (fault) {
    return { why: fault instanceof Error ? fault.message : String(fault) };
  }
}

function ledgerDoubt(says: string, line?: number): Doubt {
  return { about: "ledger", place: line === undefined ? ledgerName : `${ledgerName}:${line}`, says };
}

function isOf({ path, fileSha256 }: IndexEntry, line: FiledLine): boolean {
  return path === line.path && fileSha256 === line.fileSha256;
}

function linesOf(text: string): { lines: readonly LedgerLine[]; doubts: Doubt[] } {
  const doubts: Doubt[] = [];
  const lines = text
    .slice(0, text.lastIndexOf("\n") + 1)
    .split("\n")
    .slice(0, -1)
    .flatMap((one, index) => {
      const line = readLedgerLine(one);
      if (line === undefined) {
        doubts.push(ledgerDoubt("this is no line of a ledger", index + 1));
      }
      return line ?? [];
    });
  return { lines, doubts };
}

/** The index saves time and nothing else: where it cannot be written, as on a disk to read from, it stays as it is. */
async function renewed(disk: FilingDisk, folder: string, text: string): Promise<void> {
  try {
    await withFilingLock(disk, folder, () => disk.replace(`${folder}/${indexName}`, text));
  } catch {
    // The entries were given all the same.
  }
}
