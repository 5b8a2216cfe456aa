import { presentForm } from "../record/versions/in-present-form.ts";
import type { FilingFolder } from "./filing-folder.ts";
import { type IndexEntry, isIndexEntry } from "./index-entry.ts";
import { type FiledLine, lineHash } from "./ledger-line.ts";

/** The name of the index inside a folder: derived from the pages and never the truth, so that it may be deleted. */
export const indexName = "index.jsonl";
/** The form of the index; an index of another form, or of another ledger, is made anew. */
const indexFormat = "spanwright-index/3";

/**
 * The first line of an index that belongs to a ledger. It names the form of records too: a program that cannot read the
 * records that an index was made from does not believe it either.
 */
export function indexHeader(first: FiledLine): string {
  return JSON.stringify({ format: indexFormat, records: presentForm, begins: first.at, page: first.fileSha256 });
}

/** A row of an index: the entry, the text in which it stands there, and its SHA-256. */
export type IndexRow = { entry: IndexEntry; text: string; sha256: string };

/** A row as it stands in an index. */
export function rowOf(entry: IndexEntry, text: string): IndexRow {
  return { entry, text, sha256: lineHash(text) };
}

/** Adds the row of a page that was just filed; if that is lost, whoever reads the index makes it from the page. */
export async function addToIndex(folder: FilingFolder, line: FiledLine, { text }: IndexRow): Promise<void> {
  const { disk, path } = folder;
  const file = `${path}/${indexName}`;
  if (line.number === 1) await disk.createOnce(file, `${indexHeader(line)}\n`, "derived");
  await disk.append(file, `${text}\n`, "derived");
}

/** A whole index as text. */
export function indexText(first: FiledLine, rows: readonly IndexRow[]): string {
  return `${[indexHeader(first), ...rows.map(({ text }) => text)].join("\n")}\n`;
}

/** Rows of an index by the numbers of their lines; none of an index that belongs to another ledger. */
export function readIndexText(text: string, first: FiledLine): ReadonlyMap<number, IndexRow> {
  const lines = text.split("\n");
  if (lines[0] !== indexHeader(first)) return new Map();
  const rows = lines.slice(1).flatMap((line) => {
    const entry = parsed(line);
    return entry === undefined ? [] : [[entry.number, rowOf(entry, line)] as const];
  });
  return new Map(rows);
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
