import { pagesOf } from "./filed-lines.ts";
import type { IndexRow } from "./filing-index.ts";
import { type LedgerLine, lineHash } from "./ledger-line.ts";

/**
 * The numbers of the rows of an index that are the ones which the ledger says were written: the row of a page by the
 * line that filed it; rows that were made anew, all of them by the last line that says so.
 *
 * A row that is not borne out was altered, or made by a program of another version: then the page is to be read.
 */
export function borneOut(lines: readonly LedgerLine[], rows: ReadonlyMap<number, IndexRow>): ReadonlySet<number> {
  const filed = lines.filter((line) => line.action === "filed");
  const ofOwn = filed.filter(({ number, rowSha256 }) => rows.get(number)?.sha256 === rowSha256);
  const anew = lines.findLast((line) => line.action === "indexed");
  const found = new Set(ofOwn.filter(({ rowSha256 }) => rowSha256 !== undefined).map(({ number }) => number));
  if (anew === undefined) return found;
  const before = pagesOf(lines.slice(0, lines.indexOf(anew))).standing.map(({ number }) => number);
  const digests = before.map((number) => rows.get(number)?.sha256 ?? "");
  return rowsDigest(digests) === anew.rowsSha256 ? new Set([...found, ...before]) : found;
}

/** The SHA-256 of those of some rows, one after the other in the order of filing. */
export function rowsDigest(digests: readonly string[]): string {
  return lineHash(digests.join(""));
}
