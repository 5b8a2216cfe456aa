import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { tableOfRows, unreadableTable } from "../../../src/workbook/files/table-of-rows.ts";

const origin = { file: "x.csv", name: "x.csv", encoding: "utf-8", delimiter: "," } as const;

test("the first row is the header, at its own line", () => {
  const header = { line: 3, cells: [" tag", "output "] };
  const rows = [{ line: 5, cells: ["LT-1", "Q1"] }];
  const table = tableOfRows({ ...origin, table: "outputs", header, rows }, new ProblemList());
  expect(table).toMatchObject({ header: ["tag", "output"], headerLine: 3, rows });
});

test("a table that must be there may not be empty; one that need not be may", () => {
  const problems = new ProblemList();
  tableOfRows({ ...origin, table: "outputs", header: undefined, rows: [] }, problems);
  expect(problems.all).toEqual([]);
  tableOfRows({ ...origin, table: "readings", header: undefined, rows: [] }, problems);
  expect(problems.all.map(({ code }) => code)).toEqual(["tables/empty"]);
});

test("a table that could not be read has neither header nor rows", () => {
  expect(unreadableTable({ ...origin, table: "readings" })).toMatchObject({ header: [], rows: [] });
});
