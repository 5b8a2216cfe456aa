import { readXlsx } from "hucre/xlsx";
import { expect, test } from "vitest";
import { recordJson } from "../../../src/jobs/records/write-record.ts";
import { writeWorkbooks } from "../../../src/jobs/records/write-workbooks.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { memoryDisk } from "../memory-disk.ts";
import { reportedRecord } from "../reported-records.ts";

const { record } = await reportedRecord();

test("a record is one .xlsx at the place of its page, each record once", async () => {
  const disk = memoryDisk({ "a.json": recordJson(record), "b.json": recordJson(record) });
  const problems = new ProblemList();
  const written = await writeWorkbooks(disk, ["a.json", "b.json"], "out", problems);
  expect(problems.all).toEqual([]);
  expect(written).toEqual(["out/LT-1/C-1.xlsx"]);
  const { sheets } = await readXlsx(Buffer.from(disk.written.get("out/LT-1/C-1.xlsx") as string, "latin1"));
  expect(sheets.map(({ name }) => name).slice(0, 2)).toEqual(["Readings", "Figures"]);
});

test("a record that was changed after it was sealed, and what is no record, stop before anything is written", async () => {
  const broken = recordJson({ ...record, figureBasis: "another" });
  const disk = memoryDisk({ "a.json": recordJson(record), "broken.json": broken, "none.json": "{}" });
  for (const [path, code] of [
    ["broken.json", "filing/seal-broken"],
    ["none.json", "options/not-a-record"],
    ["away.json", "options/no-such-record"],
  ] as const) {
    const problems = new ProblemList();
    expect(await writeWorkbooks(disk, ["a.json", path], "out", problems)).toEqual([]);
    expect(problems.all.map((problem) => problem.code)).toEqual([code]);
  }
  expect(disk.written.size).toBe(0);
});

test("where the disk refuses it is told, and what was written before is named", async () => {
  const disk = memoryDisk({ "a.json": recordJson(record) }, () => true);
  const problems = new ProblemList();
  expect(await writeWorkbooks(disk, ["a.json"], "out", problems)).toEqual([]);
  expect(problems.all.map(({ code }) => code)).toEqual(["options/cannot-write"]);
});
