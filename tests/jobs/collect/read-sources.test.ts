import { zipSync } from "fflate";
import { expect, test } from "vitest";
import { readSources } from "../../../src/jobs/collect/read-sources.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { zipOf } from "../../workbook/zip-of.ts";
import { memoryDisk } from "../memory-disk.ts";

const readings = new TextEncoder().encode("calibration,reference,signal\nC-1,0,4.01\n");

test("a folder of packages gives each as a source of its own; folders inside a package do not count", async () => {
  const texts = {
    "back/a.zip": zipSync({ "sheet/readings.csv": readings }),
    "back/b.zip": zipSync({ "readings.csv": readings, "notes.txt": readings }),
  };
  const problems = new ProblemList();
  const sources = await readSources(memoryDisk(texts), ["back"], problems);
  expect(problems.all).toEqual([]);
  expect(sources.map(({ path, rows }) => [path, rows.get("readings")?.[0]?.place])).toEqual([
    ["back/a.zip", "back/a.zip/readings.csv:2"],
    ["back/b.zip", "back/b.zip/readings.csv:2"],
  ]);
});

test("a package that would unpack to more than a sheet ever hands back is refused before it is", async () => {
  const packed = zipOf("readings.csv", new Uint8Array(65_000_000));
  expect(packed.length).toBeLessThan(100_000);
  const problems = new ProblemList();
  await readSources(memoryDisk({ "a.zip": packed }), ["a.zip"], problems);
  expect(problems.all.map(sentence)[0]).toContain("it would unpack to more than 64 MB");
});
