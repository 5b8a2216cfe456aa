import { expect, test } from "vitest";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";
import { reportKept, softwareVersion } from "../reported-records.ts";

const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion, isResumed: true };
const readings = smallestWorkbook["readings.csv"];

const made = memoryDisk(inFolder("book", smallestWorkbook));
await reportKept(made, "book", options);

/** What a second run does with the files of the first, after something was done to them; its one record. */
async function resumed(change: (files: Map<string, string>) => void, more: Partial<typeof options> = {}) {
  const files = new Map([...Object.entries(inFolder("book", smallestWorkbook)), ...made.written] as [string, string][]);
  change(files);
  const second = memoryDisk(Object.fromEntries(files));
  const { written } = await reportKept(second, "book", { ...options, ...more });
  return { isKept: written[0]?.isKept ?? false, count: written.length, files: second.written.size };
}

const ending = (files: Map<string, string>, end: string) => [...files.keys()].find((path) => path.endsWith(end)) ?? "";

test("a record of the same rows stays, and nothing is written", async () => {
  expect(await resumed(() => undefined)).toEqual({ isKept: true, count: 1, files: 0 });
});

test("a changed row, a lost or cut file, or another version: it is made anew", async () => {
  const changes: readonly ((files: Map<string, string>) => void)[] = [
    (files) => files.set("book/readings.csv", readings.replace("8.01", "8.02")),
    (files) => files.delete(ending(files, ".json")),
    (files) => files.delete(ending(files, ".html")),
    (files) => files.set(ending(files, ".json"), (files.get(ending(files, ".json")) ?? "").slice(0, -20)),
    (files) => files.set(ending(files, ".html"), (files.get(ending(files, ".html")) ?? "").slice(0, 2000)),
  ];
  for (const change of changes) expect(await resumed(change)).toEqual({ isKept: false, count: 1, files: 2 });
  const other = await resumed(() => undefined, { softwareVersion: "0.1.1" });
  expect(other).toEqual({ isKept: false, count: 1, files: 2 });
});

test("without being asked to, every record is made", async () => {
  expect(await resumed(() => undefined, { isResumed: false })).toEqual({ isKept: false, count: 1, files: 2 });
});
