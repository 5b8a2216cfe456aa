import { expect, test } from "vitest";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { workbookGroups } from "../../../src/jobs/workbook/workbook-groups.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const readings = smallestWorkbook["readings.csv"];
const disk = memoryDisk({
  ...inFolder("book", smallestWorkbook),
  ...{ "a/rail.csv": readings, "b/rail.csv": readings, "b/tape.csv": readings },
});

function grouped(paths: readonly string[], options: { tag?: string; calibration?: string } = {}) {
  const problems = new ProblemList();
  const groups = workbookGroups(disk, paths, options, problems);
  return { groups, paths: groups.map(({ path }) => path), told: problems.all.map(sentence) };
}

test("one path is one workbook, and lone tables are each their own", () => {
  expect(grouped(["book"]).paths).toEqual(["book"]);
  expect(grouped(["a/rail.csv", "b/tape.csv"]).paths).toEqual(["a/rail.csv", "b/tape.csv"]);
});

test("files named after tables are one workbook, wherever they lie", async () => {
  const paths = Object.keys(smallestWorkbook).map((name) => `book/${name}`);
  const { groups } = grouped(paths);
  expect(groups).toHaveLength(1);
  const [group] = groups;
  if (group === undefined) throw new Error("no group");
  const reading = await readWorkbook(group.disk, group.path, { today: "2026-11-25", firstLook: {} });
  expect(reading.problems.all).toEqual([]);
  expect(reading.cases).toHaveLength(1);
  const missing = grouped(["book/instruments.csv", "book/nowhere.csv"]).groups[0];
  expect(await missing?.disk.read("")).toBeUndefined();
});

test("two that would get one name are told, and nothing is read", () => {
  const { paths, told } = grouped(["a/rail.csv", "b/rail.csv"]);
  expect(paths).toEqual([]);
  expect(told).toEqual([
    "b/rail.csv: its record would have the name of that of a/rail.csv; accepted: files of different names, or one after the other with --tag and --calibration",
  ]);
  expect(grouped(["a/rail.csv", "b/tape.csv"], { tag: "LT-1" }).told).toEqual([]);
  expect(grouped(["a/rail.csv", "b/tape.csv"], { tag: "LT-1", calibration: "C-1" }).told).toHaveLength(1);
});
