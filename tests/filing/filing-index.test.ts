import { expect, test } from "vitest";
import { indexHeader, indexText, readIndexText } from "../../src/filing/filing-index.ts";
import { type FiledLine, lineHash } from "../../src/filing/ledger-line.ts";
import { indexRow } from "../../src/filing/make-index-entry.ts";
import { sampleLines } from "./sample-lines.ts";
import { samplePage } from "./sample-pages.ts";

const [first, second] = sampleLines(2) as [FiledLine, FiledLine];
const rows = [first, second].map((line) => indexRow(line, samplePage().record));
const text = indexText(first, rows);

test("an index is read as it was written", () => {
  expect([...readIndexText(text, first)]).toEqual(rows.map((row) => [row.entry.number, row]));
  for (const row of rows) expect(row.sha256).toBe(lineHash(row.text));
  expect(text.split("\n")[0]).toBe(indexHeader(first));
});

test("an index of another ledger, of another form, or without its first line, counts as none", () => {
  expect(readIndexText(text, { ...first, fileSha256: second.fileSha256 }).size).toBe(0);
  expect(readIndexText(text.replace("spanwright-index/3", "spanwright-index/1"), first).size).toBe(0);
  expect(readIndexText(text.slice(text.indexOf("\n") + 1), first).size).toBe(0);
  expect(readIndexText("", first).size).toBe(0);
});

test("a line that was not finished counts as none, the others are read", () => {
  expect([...readIndexText(text.slice(0, -20), first).keys()]).toEqual([1]);
  const lines = text.split("\n");
  expect([...readIndexText(lines.with(1, "null").join("\n"), first).keys()]).toEqual([2]);
});
