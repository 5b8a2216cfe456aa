import { expect, test } from "vitest";
import { writeDerived } from "../../../src/jobs/filing/write-derived.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { memoryDisk } from "../memory-disk.ts";

async function written(path: string, there?: string, refuses?: () => boolean) {
  const disk = memoryDisk(there === undefined ? {} : { [path]: there }, refuses);
  const problems = new ProblemList();
  const isWritten = await writeDerived(disk, path, "new", problems);
  return [isWritten, disk.written.get(path), ...problems.all.map(({ code }) => code)];
}

test("nothing, and what is no record, may be written over", async () => {
  expect(await written("r/labels.html")).toEqual([true, "new"]);
  expect(await written("r/labels.html", "<title>Calibration labels</title>")).toEqual([true, "new"]);
});

test("a page of a record, its data, a ledger, an index and a table of signers stay as they are", async () => {
  const refused = [false, undefined, "options/record-there"];
  expect(await written("r/a.html", '<script type="application/json" id="record">{}</script>')).toEqual(refused);
  expect(await written("r/a.json", '{"schema":"spanwright-record/1"}')).toEqual(refused);
  for (const name of ["ledger.jsonl", "index.jsonl", "signers.csv"])
    expect(await written(`r/${name}`, "x")).toEqual(refused);
});

test("a disk that refuses is told", async () => {
  expect(await written("r/labels.html", undefined, () => true)).toEqual([false, undefined, "options/cannot-write"]);
});
