import type { Doubt } from "../record/doubt.ts";
import type { SealedRecord } from "../record/record-schema.ts";
import { borneOut, rowsDigest } from "./borne-out.ts";
import { bytesOrWhy } from "./bytes-or-why.ts";
import { checkLedger } from "./check-ledger.ts";
import { pagesOf } from "./filed-lines.ts";
import type { FilingDisk } from "./filing-disk.ts";
import { changeFolder, filingFolder } from "./filing-folder.ts";
import { type IndexRow, indexName, indexText, readIndexText } from "./filing-index.ts";
import type { IndexEntry } from "./index-entry.ts";
import { Ledger, ledgerName } from "./ledger.ts";
import type { DecidedLine, FiledLine, IndexedLine, LedgerLine, TagLine } from "./ledger-line.ts";
import { readFiledRecord } from "./read-filed-record.ts";
import { tagLinesOf, underPresentTags } from "./tag-lives.ts";
import { textOf } from "./text-of.ts";

/** What lies in a folder, in short. */
export type FilingIndex = {
  /** One a filed page that was not withdrawn, every revision, in the order of filing. */
  entries: readonly IndexEntry[];
  /** What was decided about loops found out of tolerance, in that order. */
  decisions: readonly DecidedLine[];
  /** What the ledger says of loops, page or no page. */
  tagLines: readonly TagLine[];
  /** Filed pages that cannot be read, or lines that are none: `verify` tells more. Where there is any, nothing can be
   * said of the folder, because what is missing may be what matters. */
  doubts: readonly Doubt[];
  /** Pages that a past day knew and that were disposed of since; nothing of them can be said. */
  disposedSince?: number;
};

/**
 * The records of a folder in short, from its index; what the index lacks is made from the pages and added to it.
 *
 * A row of the index is taken where the ledger bears it out and its page was not touched since the index was written, by
 * the disk's own times; whether the ledger and the pages may be believed is the business of `verify`. The index is
 * written again only where every page could be read, and the ledger then says so.
 *
 * @param on the folder as it was at the end of that day: what was filed, withdrawn, decided and said of loops until then,
 *   but for pages that were disposed of since, of which only their number is known; as it is now where left out
 */
export async function readIndex(disk: FilingDisk, folder: string, on?: string): Promise<FilingIndex> {
  // The index first: what is filed meanwhile then has its line, and no row yet.
  const index = await writtenIndex(disk, folder);
  const ledger = await readLedger(disk, folder);
  const { lines } = ledger;
  const doubts = [...ledger.doubts];
  const { standing } = pagesOf(lines);
  const first = lines.find((line) => line.action === "filed");
  if (first === undefined) return { entries: [], decisions: [], tagLines: [], doubts };
  const rows = readIndexText(index.text, first);
  const beyond = [...rows.keys()].find((number) => number > lines.length);
  if (beyond !== undefined) doubts.push(ledgerDoubt(cutOff(beyond, lines.length)));
  const known = await rowsKnown({ disk, folder, writtenAt: index.writtenAt }, borneOut(lines, rows), rows, standing);
  const made = new Map(known);
  for (const line of standing.filter(({ number }) => !known.has(number))) {
    const found = await readFiledRecord(disk, folder, line);
    if ("record" in found) made.set(line.number, await rowOfRecord(line, found.record));
    else doubts.push({ about: "folder", place: line.path, says: found.says });
  }
  const inOrder = standing.flatMap(({ number }) => made.get(number) ?? []);
  if (known.size < standing.length && doubts.length === 0) await renewed(disk, folder, first, standing, inOrder);
  const decisions = lines.filter((line) => line.action === "decided");
  const now = { entries: inOrder.map(({ entry }) => entry), decisions, tagLines: tagLinesOf(lines) };
  if (on === undefined) return { ...now, entries: underPresentTags(now.entries, now.tagLines), doubts };
  return asOf(on, { disk, folder, lines, made, doubts });
}

type Whole = {
  disk: FilingDisk;
  folder: string;
  lines: readonly LedgerLine[];
  made: ReadonlyMap<number, IndexRow>;
  doubts: Doubt[];
};

async function asOf(on: string, { disk, folder, lines, made, doubts }: Whole): Promise<FilingIndex> {
  const until = lines.filter(({ at }) => at.slice(0, on.length) <= on);
  const gone = new Set(pagesOf(lines).disposed.map(({ path }) => path));
  const { standing } = pagesOf(until);
  const entries: IndexEntry[] = [];
  for (const line of standing.filter(({ path }) => !gone.has(path))) {
    const row = made.get(line.number);
    const found = row === undefined ? await readFiledRecord(disk, folder, line) : { row };
    if ("row" in found) entries.push(found.row.entry);
    else if ("record" in found) entries.push((await rowOfRecord(line, found.record)).entry);
    else if (pagesOf(lines).withdrawn.some(({ path }) => path === line.path))
      doubts.push({ about: "folder", place: line.path, says: found.says });
  }
  const tagLines = tagLinesOf(until);
  return {
    entries: underPresentTags(entries, tagLines),
    decisions: until.filter((line) => line.action === "decided"),
    ...{ tagLines, doubts, disposedSince: standing.filter(({ path }) => gone.has(path)).length },
  };
}

/** Loaded here, for a folder whose index is whole is listed without reading a record. */
async function rowOfRecord(line: FiledLine, record: SealedRecord): Promise<IndexRow> {
  const { indexRow } = await import("./make-index-entry.ts");
  return indexRow(line, record);
}

function cutOff(row: number, last: number): string {
  return `it ends with line ${last}, and ${indexName} has the row of line ${row}: lines were taken off its end`;
}

type ReadLedger = { lines: readonly LedgerLine[]; doubts: readonly Doubt[] };

/** The lines of a ledger; where one does not hold on to the one before it, every doubt about them. */
async function readLedger(disk: FilingDisk, folder: string): Promise<ReadLedger> {
  const bytes = await bytesOrWhy(disk, `${folder}/${ledgerName}`);
  const ledger = new Ledger();
  if (bytes === undefined) return { lines: [], doubts: [] };
  if ("why" in bytes) return { lines: [], doubts: [ledgerDoubt(`it cannot be read: ${bytes.why}`)] };
  const result = ledger.readOn(bytes);
  if ("torn" in result) return { lines: ledger.lines, doubts: [] };
  const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes);
  return checkLedger(text.slice(0, text.lastIndexOf("\n") + 1));
}

/** The text of an index, and when it was written; an index that cannot be read is as good as none. */
async function writtenIndex(
  disk: FilingDisk,
  folder: string,
): Promise<{ text: string; writtenAt: number | undefined }> {
  const path = `${folder}/${indexName}`;
  const writtenAt = await disk.changedAt(path).catch(() => undefined);
  const text = writtenAt === undefined ? "" : await textOf(disk, path).catch(() => "");
  return { text, writtenAt };
}

/** As many files as are asked about at once. */
const atOnce = 64;

type Written = { disk: FilingDisk; folder: string; writtenAt: number | undefined };

/** Rows of the index for pages that are there and have not been touched since it was written. */
async function rowsKnown(
  { disk, folder, writtenAt }: Written,
  borne: ReadonlySet<number>,
  rows: ReadonlyMap<number, IndexRow>,
  standing: readonly FiledLine[],
): Promise<ReadonlyMap<number, IndexRow>> {
  const known = new Map<number, IndexRow>();
  if (writtenAt === undefined) return known;
  const look = async (line: FiledLine) => {
    const row = rows.get(line.number);
    if (row === undefined || !borne.has(line.number) || !isOf(row.entry, line)) return;
    const changedAt = await disk.changedAt(`${folder}/${line.path}`).catch(() => undefined);
    if (changedAt !== undefined && changedAt < writtenAt) known.set(line.number, row);
  };
  for (let start = 0; start < standing.length; start += atOnce) {
    await Promise.all(standing.slice(start, start + atOnce).map(look));
  }
  return known;
}

function ledgerDoubt(says: string): Doubt {
  return { about: "ledger", place: ledgerName, says };
}

function isOf({ path, fileSha256 }: IndexEntry, line: FiledLine): boolean {
  return path === line.path && fileSha256 === line.fileSha256;
}

/** The index saves time and nothing else: where it cannot be written, as on a disk to read from, it stays as it is. */
async function renewed(
  disk: FilingDisk,
  path: string,
  first: FiledLine,
  standing: readonly FiledLine[],
  rows: readonly IndexRow[],
): Promise<void> {
  try {
    await changeFolder(filingFolder(disk, path), async (enter) => {
      await disk.replace(`${path}/${indexName}`, indexText(first, rows));
      if (standing.every(({ rowSha256 }, place) => rowSha256 === rows[place]?.sha256)) return;
      const rowsSha256 = rowsDigest(rows.map(({ sha256 }) => sha256));
      await enter<IndexedLine>({ action: "indexed", rows: rows.length, rowsSha256 });
    });
  } catch {
    // The entries were given all the same.
  }
}
