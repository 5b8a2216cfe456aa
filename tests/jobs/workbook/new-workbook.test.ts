import { expect, test } from "vitest";
import { type NewWorkbookOptions, newWorkbook } from "../../../src/jobs/workbook/new-workbook.ts";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { tableNames } from "../../../src/model/table-names.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { checked } from "../../workbook/smallest-workbook.ts";
import { memoryDisk } from "../memory-disk.ts";

const today = "2026-11-25";

async function madeFiles(): Promise<ReadonlyMap<string, string>> {
  const disk = memoryDisk({});
  await newWorkbook(disk, "new");
  return disk.written;
}

test("a new workbook has a file a table with every column that somebody fills in, and a README of all", async () => {
  const files = await madeFiles();
  expect([...files.keys()]).toEqual([...tableNames.map((table) => `new/${table}.csv`), "new/README.md"]);
  for (const table of tableNames) {
    const columns = tableColumns(table);
    const filledIn = columns.filter(({ bySheet }) => bySheet !== true).map(({ name }) => name);
    expect(files.get(`new/${table}.csv`)).toBe(`${filledIn.join(",")}\n`);
    for (const { name } of columns)
      expect(files.get("new/README.md")).toMatch(new RegExp(`^\\| ${name}( \\(needed\\))? \\|`, "mu"));
  }
});

test("a new workbook is read as one in which nothing is filled in and nothing is wrong", async () => {
  const disk = memoryDisk(Object.fromEntries(await madeFiles()));
  const reading = await readWorkbook(disk, "new", { today, firstLook: {} });
  expect(reading.isUnfilled).toBe(true);
  expect(reading.cases).toEqual([]);
});

test("the example rows of its README are a workbook that is accepted", async () => {
  const readme = (await madeFiles()).get("new/README.md") ?? "";
  const examples = [...readme.matchAll(/^## (\w+\.csv)\n\nExample:\n\n```\n([^`]+)```$/gmu)];
  expect(examples).toHaveLength(tableNames.length);
  const texts = Object.fromEntries(examples.map(([, name = "", rows = ""]) => [name, rows]));
  const { problems, cases } = await checked(texts);
  expect(problems.filter(({ severity }) => severity === "stop").map(sentence)).toEqual([]);
  expect(problems.map(({ code }) => code)).toEqual([
    "model/few-points",
    "model/trips-one-direction",
    "model/few-approaches",
  ]);
  expect(cases).toHaveLength(1);
});

async function made(options: NewWorkbookOptions) {
  const disk = memoryDisk({});
  const { files } = await newWorkbook(disk, "new", options);
  const reading = await readWorkbook(disk, "new", { today, firstLook: {} });
  return {
    files: files.map((path) => path.replace("new/", "")),
    disk,
    reading,
    told: reading.problems.all.map(sentence),
  };
}

test("a minimal workbook has the tables and the columns that must be there, and a signal", async () => {
  const { files, disk, reading } = await made({ isMinimal: true });
  expect(files).toEqual(["instruments.csv", "calibrations.csv", "readings.csv", "README.md"]);
  expect(disk.written.get("new/readings.csv")).toBe("calibration,phase,direction,reference,signal\n");
  expect(reading.isUnfilled).toBe(true);
});

test.each<[NewWorkbookOptions, number]>([
  [{ isExample: true }, 7],
  [{ isExample: true, isSpreadsheet: true }, 2],
])("an example %j is a filled workbook in which nothing is wrong", async (options, count) => {
  const { files, reading, told } = await made(options);
  expect(told).toEqual([]);
  expect(files).toHaveLength(count);
  expect(reading.counts.readings).toBe(60);
  expect(reading.cases[0]?.read().trips).toHaveLength(12);
});

test("an example with what must be there alone says what it does without", async () => {
  const { told, reading } = await made({ isExample: true, isMinimal: true });
  expect(reading.cases).toHaveLength(1);
  expect(told).toEqual([expect.stringContaining("the calibration names no standard")]);
});

test("an empty spreadsheet has a sheet a table with its header", async () => {
  const { files, reading } = await made({ isSpreadsheet: true });
  expect(files).toEqual(["workbook.xlsx", "README.md"]);
  expect(reading.isUnfilled).toBe(true);
});

test("a folder that holds something is refused, and nothing is written", async () => {
  const disk = memoryDisk({ "old/notes.txt": "" });
  const { files, problems } = await newWorkbook(disk, "old");
  expect(files).toEqual([]);
  expect(problems.all.map(sentence)).toEqual([
    "old: the folder holds files already: notes.txt; accepted: a new folder, or an empty one",
  ]);
  expect(disk.written.size).toBe(0);
});

test("a disk that refuses is told", async () => {
  const { files, problems } = await newWorkbook(
    memoryDisk({}, () => true),
    "new",
  );
  expect(files).toEqual([]);
  expect(problems.all.map(sentence)).toEqual([
    "new: nothing could be written there: no room for new/instruments.csv; accepted: a folder in which this user may write",
  ]);
});
