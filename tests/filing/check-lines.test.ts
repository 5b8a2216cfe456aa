import { expect, test } from "vitest";
import { checkLines } from "../../src/filing/check-lines.ts";
import type { FiledLine, LedgerLine } from "../../src/filing/ledger-line.ts";
import { sampleLines } from "./sample-lines.ts";

const lines = sampleLines(3) as [FiledLine, FiledLine, FiledLine];
const [first, second, third] = lines;
const told = (given: readonly LedgerLine[]) => checkLines(given).map(({ says }) => says);
const withdrawn = { ...second, number: 4, action: "withdrawn" as const, by: "A. Example", reason: "a slip" };
const again = { ...second, number: 5, path: second.path.replace(".html", "_again2.html") };

test("nothing is doubtful about lines as filing writes them, nor about a page filed in the place of a withdrawn one", () => {
  expect(told(lines)).toEqual([]);
  expect(told([...lines, withdrawn, again])).toEqual([]);
});

test("a revision that is filed twice, and a path that is used twice, even after a withdrawal", () => {
  const twice = "line 5 files revision 1 of C-2 of LT-1 a second time";
  expect(told([...lines, again])).toEqual([twice]);
  expect(told([...lines, withdrawn, { ...again, path: second.path }])).toEqual([twice]);
});

test("a withdrawal of a page that was never filed, or that was withdrawn before", () => {
  expect(told([...lines, { ...withdrawn, calibration: "C-9" }])).toEqual([
    "line 4 withdraws a page that no line before it files",
  ]);
  expect(told([...lines, withdrawn, { ...withdrawn, number: 5 }])).toEqual([
    "line 5 withdraws a page that no line before it files",
  ]);
});

test("times that run backwards, by more than clocks differ", () => {
  const at = (line: FiledLine, time: string) => ({ ...line, at: `2026-11-25T${time}Z` });
  expect(told([at(first, "10:00:00"), at(second, "09:55:00"), at(third, "10:01:00")])).toEqual([]);
  expect(told([at(first, "10:00:00"), at(second, "08:00:00"), at(third, "09:00:00")])).toEqual([
    "line 2 says 2026-11-25T08:00:00Z, and line 1 before it 2026-11-25T10:00:00Z: a clock was wrong, or the time was written by hand",
    "line 3 says 2026-11-25T09:00:00Z, and line 1 before it 2026-11-25T10:00:00Z: a clock was wrong, or the time was written by hand",
  ]);
});
