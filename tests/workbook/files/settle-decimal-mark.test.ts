import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import type { Delimiter } from "../../../src/workbook/files/raw-table.ts";
import { settleDecimalMark } from "../../../src/workbook/files/settle-decimal-mark.ts";
import { headerColumns } from "../../../src/workbook/header-columns.ts";

function settle(delimiter: Delimiter | null, ...signals: readonly string[]) {
  const problems = new ProblemList();
  const rows = signals.map((signal, index) => ({ line: index + 2, cells: [signal, "1,5 was meant; 2.5 was not"] }));
  const mark = settleDecimalMark(
    { file: "readings.csv", rows, delimiter },
    headerColumns("readings", ["signal", "remark"]),
    problems,
  );
  return [mark, ...problems.all.map(({ code, place }) => `${code} ${place.line}`)];
}

test("only cells of number columns have a say", () => {
  expect(settle(";", "4", "20")).toEqual(["point"]);
  expect(settle(";", "4,5")).toEqual(["comma"]);
});

test("one comma that cannot be a thousands mark settles a file separated by commas", () => {
  expect(settle(",", "1,234", "12,5")).toEqual(["comma"]);
  expect(settle(",", "0,234")).toEqual(["comma"]);
  expect(settle(",", "1234,567")).toEqual(["comma"]);
  expect(settle(",", ",567")).toEqual(["comma"]);
});

test("commas that may all be thousands marks are refused unless the delimiter tells", () => {
  expect(settle(",", "1,234", "12,345")).toEqual(["comma", "tables/decimal-mark-ambiguous 2"]);
  expect(settle(null, "1,234")).toEqual(["comma", "tables/decimal-mark-ambiguous 2"]);
  expect(settle(";", "1,234")).toEqual(["comma"]);
  expect(settle("\t", "1,234")).toEqual(["comma"]);
});

test("both marks in one file are refused, and the more frequent one is gone on with", () => {
  expect(settle(";", "1.5", "2,5", "3,5")).toEqual(["comma", "tables/decimal-mark-mixed 3"]);
  expect(settle(";", "1.5", "2,5", "3.5")).toEqual(["point", "tables/decimal-mark-mixed 3"]);
});

test("what is no number has no say: groups, both marks in one cell, words", () => {
  expect(settle(";", "1,234,567", "1.234,5", "n.a.", "see p. 5, please", "-", "4.0")).toEqual(["point"]);
});

test("a sign, a unit and spaces do not hide the mark", () => {
  expect(settle(";", "± 0,5 %")).toEqual(["comma"]);
  expect(settle(";", "−1\u00a0234,5mm")).toEqual(["comma"]);
});
