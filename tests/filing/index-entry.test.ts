import { expect, test } from "vitest";
import { isIndexEntry } from "../../src/filing/index-entry.ts";
import type { FiledLine } from "../../src/filing/ledger-line.ts";
import { indexEntry } from "../../src/filing/make-index-entry.ts";
import { sampleLines } from "./sample-lines.ts";
import { samplePage } from "./sample-pages.ts";

const [line] = sampleLines(1) as [FiledLine];

test("an entry is known as one after it went through a file; what others put in its place is none", () => {
  const entry = JSON.parse(JSON.stringify(indexEntry(line, samplePage({ isOutOfTolerance: true }).record)));
  expect(isIndexEntry(entry)).toBe(true);
  expect(isIndexEntry({ ...entry, description: "tank", intervalMonths: 6 })).toBe(true);
  const { summary, ...bare } = entry;
  for (const other of [
    ...[null, [], 5, bare, { ...bare, summary: {} }, { ...entry, description: 5 }, { ...entry, more: "" }],
    ...[
      { ...entry, summary: { ...summary, asFound: { ...summary.asFound, worst: 5 } } },
      { ...entry, summary: { ...summary, asFound: { ...summary.asFound, places: [[0, 1, 2]] } } },
      { ...entry, standards: [{}] },
    ],
  ]) {
    expect(isIndexEntry(other)).toBe(false);
  }
});
