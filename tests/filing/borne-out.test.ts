import { expect, test } from "vitest";
import { borneOut, rowsDigest } from "../../src/filing/borne-out.ts";
import type { IndexedLine, LedgerLine } from "../../src/filing/ledger-line.ts";
import { indexRow } from "../../src/filing/make-index-entry.ts";
import { sampleLines } from "./sample-lines.ts";
import { samplePage } from "./sample-pages.ts";

const { record } = samplePage();
const rows = new Map(sampleLines(3).map((line) => [line.number, indexRow(line, record)]));
const digests = [...rows.values()].map(({ sha256 }) => sha256);
const noted = sampleLines(3).map((line, place) => ({ ...line, rowSha256: digests[place] ?? "" }));
const altered = new Map(rows).set(2, { ...indexRow(sampleLines(3)[1]!, record), sha256: "0".repeat(64) });

const anew = (rowsSha256: string): IndexedLine => {
  return { action: "indexed", number: 4, at: "2026-11-25T10:00:00Z", previous: "", rows: 3, rowsSha256 };
};

test("a row is borne out by the line that filed its page, and an altered one is not", () => {
  expect([...borneOut(noted, rows)]).toEqual([1, 2, 3]);
  expect([...borneOut(noted, altered)]).toEqual([1, 3]);
});

test("a line that notes no row bears none out, unless the index was made anew after it, all rows together", () => {
  const lines: LedgerLine[] = [...sampleLines(3)];
  expect([...borneOut(lines, rows)]).toEqual([]);
  expect([...borneOut([...lines, anew(rowsDigest(digests))], rows)]).toEqual([1, 2, 3]);
  expect([...borneOut([...lines, anew(rowsDigest(digests))], altered)]).toEqual([]);
});

test("rows that were made anew leave the page out that was withdrawn before", () => {
  const [first, second, third] = sampleLines(3);
  const gone = { ...second!, action: "withdrawn" as const, by: "A. Example", reason: "a slip" };
  const digest = rowsDigest([digests[0]!, digests[2]!]);
  expect([...borneOut([first!, second!, third!, gone, anew(digest)], rows)]).toEqual([1, 3]);
});
