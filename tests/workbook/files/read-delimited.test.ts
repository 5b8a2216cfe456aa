import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { readDelimited } from "../../../src/workbook/files/read-delimited.ts";

test("a file of text becomes a table that says how it was read", () => {
  const problems = new ProblemList();
  const bytes = new TextEncoder().encode("\ufeffSignal ;remark\n4,01;ok\n");
  const { rows, ...table } = readDelimited({ name: "in/readings.csv", bytes }, "readings", problems);
  expect([...rows]).toEqual([{ line: 2, cells: ["4,01", "ok"] }]);
  expect(table).toEqual({
    table: "readings",
    file: "in/readings.csv",
    header: ["Signal", "remark"],
    headerLine: 1,
    decimalMark: "comma",
    description: { name: "in/readings.csv", encoding: "utf-8", delimiter: ";", decimalMark: "comma" },
  });
  expect(problems.all).toEqual([]);
});

test("bytes that are no text become a table without a header, so that nothing else is said about it", () => {
  const problems = new ProblemList();
  const table = readDelimited({ name: "readings.csv", bytes: new Uint8Array([0xe9, 0x81]) }, "readings", problems);
  expect(table).toMatchObject({ header: [], rows: [] });
  expect(problems.all.map(({ code }) => code)).toEqual(["tables/encoding"]);
});
