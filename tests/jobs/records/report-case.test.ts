import { expect, test } from "vitest";
import type { CaseReporter } from "../../../src/jobs/records/report-case.ts";
import { oneByOne } from "../../../src/jobs/records/report-case.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";
import { reportKept, softwareVersion } from "../reported-records.ts";

const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion };

test("a case that went through a structured clone, as between threads, gives the same bytes and the same problems", async () => {
  const texts = inFolder("book", smallestWorkbook);
  const here = memoryDisk(texts);
  const elsewhere = memoryDisk(texts);
  const cloning: CaseReporter = async function* (cases) {
    async function* cloned() {
      for await (const one of cases) yield structuredClone(one);
    }
    for await (const reported of oneByOne(elsewhere)(cloned())) yield structuredClone(reported);
  };
  const direct = await reportKept(here, "book", options);
  const between = await reportKept(elsewhere, "book", { ...options, reporterFor: () => cloning });
  expect([...elsewhere.written]).toEqual([...here.written]);
  expect(between.written).toEqual(direct.written);
  expect(between.reading.problems.all).toEqual(direct.reading.problems.all);
});

test("once it is told to stop, no other record is begun", async () => {
  const disk = memoryDisk(inFolder("book", smallestWorkbook));
  const { written } = await reportKept(disk, "book", { ...options, isStopped: () => true });
  expect(written).toEqual([]);
  expect([...disk.written]).toEqual([]);
});
