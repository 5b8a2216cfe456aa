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
  /** Filed pages that could not be read, or lines that are none: `verify` tells more. */
  doubts: readonly Doubt[];
};

/**
 * The records of a folder in short, from its index; what the index lacks is made from the pages and added to it.
 *
 * It is quick because it believes the index and the ledger; whether they may be believed is the business of `verify`.
 */
export async function readIndex(disk: FilingDisk, folder: string): Promise<FilingIndex> {
  const { lines, doubts } = linesOf(await textOf(disk, `${folder}/${ledgerName}`));
  const [first] = lines;
  if (first === undefined) return { entries: [], decisions: [], doubts };
  const known = readIndexText(await textOf(disk, `${folder}/${indexName}`), first);
  const entries: IndexEntry[] = [];
  let isBehind = false;
  for (const line of lines) {
    if (line.action !== "filed") continue;
    const entry = known.get(line.number);
    if (entry !== undefined && isOf(entry, line)) {
      entries.push(entry);
      continue;
    }
    const found = await readFiledRecord(disk, folder, line);
    if ("record" in found) {
      isBehind = true;
      entries.push(indexEntry(line, found.record));
    } else doubts.push({ about: "folder", place: line.path, says: found.says });
  }
  if (isBehind) await renewed(disk, folder, indexText(first, entries));
  return { entries, decisions: lines.filter((line) => line.action === "decided"), doubts };
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
        doubts.push({ about: "ledger", place: `${ledgerName}:${index + 1}`, says: "this is no line of a ledger" });
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
