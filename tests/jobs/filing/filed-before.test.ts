import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { filedBefore } from "../../../src/jobs/filing/filed-before.ts";
import { verifyRecord } from "../../../src/jobs/signing/verify-record.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { diskWith, onPaper, samplePage, settled, temporaryFolder } from "../../filing/sample-pages.ts";
import { smallestWorkbook } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";
import { reportKept } from "../reported-records.ts";

/** Two records of LT-1 and eight of other loops, one of them found out of tolerance; the workbook's own is of 2026-03-04. */
async function filledFolder(): Promise<string> {
  const path = temporaryFolder();
  const folder = filingFolder(diskWith(), path);
  for (const page of [
    samplePage({ calibration: "C-B", performedOn: "2025-03-04" }),
    samplePage({ calibration: "C-A", performedOn: "2024-03-04" }),
    ...Array.from({ length: 8 }, (_, index) =>
      samplePage({ tag: `LT-1${index}`, performedOn: "2025-01-01", isOutOfTolerance: index === 3 }),
    ),
  ]) {
    await filePage(folder, page, onPaper);
  }
  await settled(path);
  return path;
}

test("what was filed before gives the history of the tag, and each page is read once", async () => {
  const path = await filledFolder();
  const pages: string[] = [];
  const { read } = diskWith();
  const disk = diskWith({
    read: (file) => {
      if (file.endsWith(".html")) pages.push(file);
      return read(file);
    },
  });
  const problems = new ProblemList();
  const before = await filedBefore({ disk, path }, problems);
  const found = await before?.({ tag: "LT-1", calibration: "C-1", performedOn: "2026-03-04" });
  await before?.({ tag: "LT-1", calibration: "C-2", performedOn: "2026-03-05" });
  expect(problems.all).toEqual([]);
  const summaries = ["2024-03-04", "2025-03-04"].map((performedOn, index) =>
    recordSummary(samplePage({ calibration: index === 0 ? "C-A" : "C-B", performedOn }).record),
  );
  expect(found?.history).toEqual(summaries);
  expect(found?.history[0]?.asFound?.points.length).toBeGreaterThan(0);
  expect(found?.filedRate).toEqual({ inTolerance: 9, of: 10 });
  expect(pages.map((page) => page.slice(path.length + 1))).toEqual([
    "LT-1/2024-03-04_C-A_r1.html",
    "LT-1/2025-03-04_C-B_r1.html",
  ]);
});

test("a page that is no longer the one that was filed is told, and there is no history without it", async () => {
  const path = await filledFolder();
  const page = join(path, "LT-1/2024-03-04_C-A_r1.html");
  const problems = new ProblemList();
  const before = await filedBefore({ disk: diskWith(), path }, problems);
  writeFileSync(page, "changed");
  expect(await before?.({ tag: "LT-1", calibration: "C-1", performedOn: "2026-03-04" })).toBeUndefined();
  expect(await before?.({ tag: "LT-1", calibration: "C-2", performedOn: "2026-03-04" })).toBeUndefined();
  expect((await before?.({ tag: "LT-2", calibration: "C-3", performedOn: "2026-03-04" }))?.history).toEqual([]);
  expect(problems.all.map(sentence)).toEqual([
    expect.stringContaining("C-A_r1.html: the page is not the one that was filed"),
  ]);
  expect(problems.hasStop).toBe(true);
  expect(await filedBefore({ disk: diskWith(), path }, problems)).toBeUndefined();
});

const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0" };

test("a record made with a folder carries history and rate, and its page verifies from itself alone", async () => {
  const disk = memoryDisk(inFolder("book", smallestWorkbook));
  const filed = { disk: diskWith(), path: await filledFolder() };
  const { written, reading } = await reportKept(disk, "book", { ...options, filed });
  expect(reading.problems.all).toEqual([]);
  const record = written[0]?.record;
  expect(record?.history?.map(({ calibration }) => calibration)).toEqual(["C-A", "C-B"]);
  expect(record?.filedRate).toEqual({ inTolerance: 9, of: 10 });
  // (9 + 1)/(10 + 2), for nobody states a rate.
  expect(record?.falseAccept?.inToleranceRate).toBe((100 * 10) / 12);
  expect(disk.written.get("out/LT-1/C-1.html")).toContain("as 9 of 10 filed records found theirs");
  const page = disk.written.get("out/LT-1/C-1.html") ?? "";
  expect(await verifyRecord(page, "C-1.html", { signers: undefined, softwareVersion: "0.0.0" })).toEqual([]);
});

test("a folder that is none stops the report, and without a folder a record has neither", async () => {
  const disk = memoryDisk(inFolder("book", smallestWorkbook));
  const filed = { disk: diskWith(), path: temporaryFolder() };
  const stopped = await reportKept(disk, "book", { ...options, filed });
  expect([stopped.written.length, stopped.reading.problems.hasStop]).toEqual([0, true]);
  const [plain] = (await reportKept(disk, "book", options)).written;
  expect(plain?.record).not.toHaveProperty("history");
  expect(plain?.record).not.toHaveProperty("filedRate");
});
