import { expect, test } from "vitest";
import { groupedSentences } from "../../src/problems/grouped-sentences.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { sentence } from "../../src/problems/sentence.ts";

const notNumber = (line: number, read: string, column = "signal"): Problem => ({
  code: "tables/cell-not-number",
  severity: "stop",
  place: { file: "readings.csv", line, column },
  read,
  values: { example: "12.02" },
});

test("a problem alone is its sentence", () => {
  expect(groupedSentences([notNumber(3, "8.O1")])).toEqual([sentence(notNumber(3, "8.O1"))]);
});

test("those of one code and column are one line with their count and their places", () => {
  const problems = [notNumber(3, "8.O1"), notNumber(3, "x", "reference"), notNumber(5, "8.O1"), notNumber(9, "n/a")];
  expect(groupedSentences(problems)).toEqual([
    'readings.csv:3:signal: this is not a number; read "8.O1"; accepted: a number such as 12.02; and 2 more like it: line 5, line 9 "n/a"',
    sentence(problems[1] as Problem),
  ]);
});

test("of many the first places are named and the rest counted", () => {
  const [line] = groupedSentences(Array.from({ length: 105 }, (_, index) => notNumber(index + 2, "x")));
  expect(line).toContain("; and 104 more like it: line 3, line 4, line 5, line 6, line 7, line 8, …");
});

test("further places on a sheet are its cells, and another sheet is another line", () => {
  const onSheet = (sheet: string, line: number): Problem => ({
    ...notNumber(line, "x"),
    place: { file: "a.xlsx", sheet, line, column: "signal", cell: `E${line}` },
  });
  const lines = groupedSentences([onSheet("readings", 3), onSheet("readings", 5), onSheet("trips", 3)]);
  expect(lines).toHaveLength(2);
  expect(lines[0]).toContain("a.xlsx, sheet readings, cell E3 (signal): ");
  expect(lines[0]).toContain("; and 1 more like it: cell E5");
});

test("a place without a line is named whole", () => {
  const missing = (file: string): Problem => ({
    code: "tables/file-kind",
    severity: "warn",
    place: { file },
    values: {},
  });
  expect(groupedSentences([missing("a.ods"), missing("a.ods")])[0]).toContain("and 1 more like it: a.ods");
});
