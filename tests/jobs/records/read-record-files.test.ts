import { expect, test } from "vitest";
import { readRecordFiles } from "../../../src/jobs/records/read-record-files.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

test("records come in the order in which they are named; a folder, nothing and no record are problems", async () => {
  const json = (tag: string) => JSON.stringify(sealRecord(sampleRecord({ tag })));
  const problems = new ProblemList();
  const disk = memoryDisk({ "b.json": json("LT-2"), "a.json": json("LT-1"), "x/y.json": json("LT-3"), "n.txt": "" });
  const files = await readRecordFiles(disk, ["b.json", "x", "gone", "n.txt", "a.json"], problems);
  expect(files.map(({ record }) => record.instrument.tag)).toEqual(["LT-2", "LT-1"]);
  expect(problems.all.map(({ code, place }) => `${place.file} ${code}`)).toEqual([
    "x options/no-such-record",
    "gone options/no-such-record",
    "n.txt options/not-a-record",
  ]);
});
