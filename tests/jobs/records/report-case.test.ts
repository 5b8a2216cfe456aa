import { expect, test } from "vitest";
import {
  type CaseReporter,
  type CaseToReport,
  casesInTurn,
  oneByOne,
  type ReportedCase,
  withoutRecord,
} from "../../../src/jobs/records/report-case.ts";
import { summaryOfIndex, summaryRows } from "../../../src/jobs/records/summary-rows.ts";
import { indexRow } from "../../../src/report/columns/index-columns.tsx";
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
  const between = await reportKept(elsewhere, "book", { ...options, reporterFor: async () => cloning });
  expect([...elsewhere.written]).toEqual([...here.written]);
  expect(between.written).toEqual(direct.written);
  expect(between.reading.problems.all).toEqual(direct.reading.problems.all);
});

test("of a record that was made in another thread its line comes back, and no more", async () => {
  const disk = memoryDisk(inFolder("book", smallestWorkbook));
  const sent: ReportedCase[] = [];
  const sending: CaseReporter = async function* (cases) {
    for await (const reported of oneByOne(disk)(cases)) {
      sent.push(withoutRecord(reported));
      yield reported;
    }
  };
  const { written } = await reportKept(disk, "book", { ...options, reporterFor: async () => sending });
  const row = indexRow(written[0]!.record, "LT-1/C-1.html");
  expect(sent).toEqual([{ written: { page: "out/LT-1/C-1.html", row }, problems: [] }]);
  expect(JSON.stringify(sent).length).toBeLessThan(1000);
  expect(summaryOfIndex([row], "out")).toEqual(summaryRows(written));
});

test("records are written one at a time, in their order, and a disk that refuses one takes the next", async () => {
  const memory = memoryDisk(inFolder("book", smallestWorkbook));
  const asked: CaseToReport[] = [];
  const asking: CaseReporter = async function* (cases) {
    async function* noted() {
      for await (const one of cases) {
        asked.push(one);
        yield one;
      }
    }
    yield* oneByOne(memory)(noted());
  };
  await reportKept(memory, "book", { ...options, reporterFor: async () => asking });
  const events: string[] = [];
  const disk = {
    read: memory.read,
    writeTogether: async () => {
      events.push("begun");
      await new Promise((done) => setTimeout(done, 5));
      events.push("written");
      if (events.length === 2) throw new Error("a fault of the first");
    },
  };
  const report = casesInTurn(disk);
  const [one] = asked;
  const all = await Promise.allSettled([report(one!), report(one!), report(one!)]);
  expect(all.map(({ status }) => status)).toEqual(["rejected", "fulfilled", "fulfilled"]);
  expect(events).toEqual(["begun", "written", "begun", "written", "begun", "written"]);
});

test("once it is told to stop, no other record is begun", async () => {
  const disk = memoryDisk(inFolder("book", smallestWorkbook));
  const { written } = await reportKept(disk, "book", { ...options, isStopped: () => true });
  expect(written).toEqual([]);
  expect([...disk.written]).toEqual([]);
});
