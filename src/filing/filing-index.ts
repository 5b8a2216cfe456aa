import type { SealedRecord } from "../record/record-schema.ts";
import { presentForm } from "../record/versions/in-present-form.ts";
import type { FilingFolder } from "./filing-folder.ts";
import { type IndexEntry, indexEntry, isIndexEntry } from "./index-entry.ts";
import type { FiledLine, LedgerLine } from "./ledger-line.ts";

/** The name of the index inside a folder: derived from the pages and never the truth, so that it may be deleted. */
export const indexName = "index.jsonl";
/** The form of the index; an index of another form, or of another ledger, is made anew. */
const indexFormat = "spanwright-index/2";

/**
 * The first line of an index that belongs to a ledger. It names the form of records too: a program that cannot read the
 * records that an index was made from does not believe it either.
 */
export function indexHeader(first: LedgerLine): string {
  return JSON.stringify({ format: indexFormat, records: presentForm, begins: first.at, page: first.fileSha256 });
}

/** Adds the entry of a page that was just filed; if that is lost, whoever reads the index makes it from the page. */
export async function addToIndex(folder: FilingFolder, line: FiledLine, record: SealedRecord): Promise<void> {
  const { disk, path } = folder;
  const file = `${path}/${indexName}`;
  if (line.number === 1) await disk.createOnce(file, `${indexHeader(line)}\n`, "derived");
  await disk.append(file, `${JSON.stringify(indexEntry(line, record))}\n`, "derived");
}

/** A whole index as text. */
export function indexText(first: LedgerLine, entries: readonly IndexEntry[]): string {
  return `${[indexHeader(first), ...entries.map((entry) => JSON.stringify(entry))].join("\n")}\n`;
}

/** Entries of an index by the numbers of their lines; none of an index that belongs to another ledger. */
export function readIndexText(text: string, first: LedgerLine): ReadonlyMap<number, IndexEntry> {
  const lines = text.split("\n");
  if (lines[0] !== indexHeader(first)) return new Map();
  const entries = lines.slice(1).flatMap((line) => {
    const entry = parsed(line);
    return entry === undefined ? [] : [[entry.number, entry] as const];
  });
  return new Map(entries);
}

/** A line that was not finished is no JSON; one that others wrote may be anything, and then the page is read instead. */
function parsed(line: string): IndexEntry | undefined {
  try {
    const found: unknown = JSON.parse(line);
    return isIndexEntry(found) ? found : undefined;
  } catch {
    return undefined;
  }
}
