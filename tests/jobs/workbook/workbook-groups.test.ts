import { expect, test } from "vitest";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { workbookGroups } from "../../../src/jobs/workbook/workbook-groups.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const readings = smallestWorkbook["readings.csv"];
const renamed = (from: string, to: string) =>
  Object.fromEntries(Object.entries(smallestWorkbook).map(([name, text]) => [name, text.replaceAll(from, to)]));
const disk = memoryDisk({
  ...inFolder("book", smallestWorkbook),
  ...inFolder("shop", renamed("20.01", "20.02")),
  ...inFolder("capitals", renamed("C-1", "c-1")),
  ...inFolder("other", renamed("C-1", "C-2")),
  ...inFolder("hall/2026", smallestWorkbook),
  ...inFolder("yard/2026", renamed("LT-1", "LT-2")),
  ...{ "a/rail.csv": readings, "b/rail.csv": readings, "b/tape.csv": readings },
});

async function grouped(paths: readonly string[], options: { tag?: string; calibration?: string } = {}) {
  const problems = new ProblemList();
  const groups = await workbookGroups(disk, paths, options, problems);
  return { groups, paths: groups.map(({ path }) => path), told: problems.all.map(sentence) };
}

test("one path is one workbook, and lone tables are each their own", async () => {
  expect((await grouped(["book"])).paths).toEqual(["book"]);
  expect((await grouped(["a/rail.csv", "b/tape.csv"])).paths).toEqual(["a/rail.csv", "b/tape.csv"]);
});

test("files named after tables are one workbook, wherever they lie", async () => {
  const paths = Object.keys(smallestWorkbook).map((name) => `book/${name}`);
  const { groups } = await grouped(paths);
  expect(groups).toHaveLength(1);
  const [group] = groups;
  if (group === undefined) throw new Error("no group");
  const reading = await readWorkbook(group.disk, group.path, { today: "2026-11-25", firstLook: {} });
  expect(reading.problems.all).toEqual([]);
  expect(reading.cases).toHaveLength(1);
  const missing = (await grouped(["book/instruments.csv", "book/nowhere.csv"])).groups[0];
  expect(await missing?.disk.read("")).toBeUndefined();
});

const oneName = (file: string, names: string, first: string) =>
  `${file}: its record of ${names}, would have the name of that of ${first}, and the one would be written over the other; accepted: another number for one of the calibrations, lone tables of different names, or one run after the other, each with a folder of its own: --out`;

test("two lone tables that would get one name are told, and nothing is read", async () => {
  const { paths, told } = await grouped(["a/rail.csv", "b/rail.csv"]);
  expect(paths).toEqual([]);
  expect(told).toEqual([oneName("b/rail.csv", "rail, C-1", "a/rail.csv")]);
  expect((await grouped(["a/rail.csv", "b/tape.csv"], { calibration: "C-1" })).told).toEqual([]);
  expect((await grouped(["a/rail.csv", "b/tape.csv"], { tag: "LT-1" })).told).toHaveLength(1);
});

test("two workbooks of one tag and number are told, whatever else they hold and whatever their folders are called", async () => {
  const { paths, told } = await grouped(["book", "shop"]);
  expect(paths).toEqual([]);
  expect(told).toEqual([oneName("shop", "LT-1, C-1", "book")]);
  expect((await grouped(["book", "book"])).told).toHaveLength(1);
  expect((await grouped(["book", "capitals"])).told).toEqual([oneName("capitals", "LT-1, c-1", "book")]);
});

test("workbooks that share a tag or a number, and not both, are read, and so are those of which another one is asked for", async () => {
  expect((await grouped(["book", "other"])).paths).toEqual(["book", "other"]);
  expect((await grouped(["hall/2026", "yard/2026"])).paths).toEqual(["hall/2026", "yard/2026"]);
  expect((await grouped(["book", "shop"], { calibration: "C-9" })).told).toEqual([]);
});

test("what comes on the standard input is there for whoever reads it after its names", async () => {
  let reads = 0;
  const once = {
    ...disk,
    read: async (path: string) =>
      path === "-" && reads++ > 0 ? undefined : disk.read(path === "-" ? "a/rail.csv" : path),
  };
  const groups = await workbookGroups(once, ["-", "book"], {}, new ProblemList());
  expect(await groups[0]?.disk.read("-")).toBeDefined();
});
