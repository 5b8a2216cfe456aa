import { expect, test } from "vitest";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { mayHoldTable, readTables } from "../../src/workbook/read-tables.ts";
import { filesOf, type Texts } from "./smallest-workbook.ts";

async function read(texts: Texts) {
  const problems = new ProblemList();
  const tables = await readTables(filesOf(texts), problems);
  return { tables: tables.map(({ table, file }) => [table, file]), codes: problems.all.map(({ code }) => code) };
}

test("each .csv file is the table that its name says, in any folder and any case", async () => {
  const { tables, codes } = await read({
    "data-demo/Readings.CSV": "signal\n4\n",
    "C:\\in\\loop checks.csv": "item\nx\n",
    "trips.csv": "output\nQ1\n",
  });
  expect(tables).toEqual([
    ["readings", "data-demo/Readings.CSV"],
    ["loop_checks", "C:\\in\\loop checks.csv"],
    ["trips", "trips.csv"],
  ]);
  expect(codes).toEqual([]);
});

test("notes, pictures, hidden files and a spreadsheet's lock file are passed over silently", async () => {
  const { tables, codes } = await read({
    "README.md": "# hello",
    "notes.txt": "x",
    "photo.jpg": "x",
    "scan.pdf": "x",
    ".readings.csv": "x",
    "~$book.xlsx": "x",
    "in/.hidden/pumps.txt": "x",
    LICENSE: "x",
  });
  expect(tables).toEqual([]);
  expect(codes).toEqual([]);
});

test("tables that cannot be used are told", async () => {
  const { codes } = await read({
    "reading.csv": "x",
    "readings.ods": "x",
    "readings.XLS": "x",
    "readings.numbers": "x",
  });
  expect(codes).toEqual(["tables/file-unknown", "tables/spreadsheet", "tables/file-kind", "tables/file-kind"]);
});

test("tables with tabs between the cells are read too, as .tsv and as .txt", async () => {
  const { tables, codes } = await read({
    "trips.tsv": "output\treference\nQ1\t12\n",
    "Readings.TXT": "signal\n4\n",
    "x.tsv": "1",
  });
  expect(tables).toEqual([
    ["trips", "trips.tsv"],
    ["readings", "Readings.TXT"],
  ]);
  expect(codes).toEqual(["tables/file-unknown"]);
});

test.each([
  ["readings.csv", true],
  ["anything.CSV", true],
  ["book.xlsx", true],
  ["old.xls", true],
  ["loop checks.txt", true],
  ["log.txt", false],
  ["photo.jpg", false],
  ["certificate.pdf", false],
  ["~$book.xlsx", false],
  [".readings.csv", false],
])("%s may hold a table: %s", (name, may) => {
  expect(mayHoldTable(name)).toBe(may);
});

test("of two files for one table the first is kept and the second is told", async () => {
  const { tables, codes } = await read({ "a/trips.csv": "output\nQ1\n", "b/trips.csv": "output\nQ2\n" });
  expect(tables).toEqual([["trips", "a/trips.csv"]]);
  expect(codes).toEqual(["tables/table-twice"]);
});
