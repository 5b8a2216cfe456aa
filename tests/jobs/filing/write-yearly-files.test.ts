import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { readIndex } from "../../../src/filing/read-index.ts";
import { withdrawPage } from "../../../src/filing/withdraw-page.ts";
import { CannotWrite } from "../../../src/jobs/disk.ts";
import { writeYearlyFiles } from "../../../src/jobs/filing/write-yearly-files.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { fileDigest } from "../../../src/record/file-digest.ts";
import { diskWith, onPaper, pageOf, sampleRecord, temporaryFolder } from "../../filing/sample-pages.ts";
import { askedOfDuckDb } from "../../fleet/asked-of-duckdb.ts";

const filing = diskWith();
const disks = { filing, plain: nodeDisk };

/** A folder with a record of LT-1 of each of those days; none where it is not said. */
async function folderOf(...days: readonly (string | undefined)[]) {
  const folder = temporaryFolder();
  const pages = days.map((performedOn, place) =>
    pageOf(sampleRecord({ tag: "LT-1", calibration: `C-${place}`, performedOn })),
  );
  const lines = [];
  for (const page of pages) lines.push((await filePage(filingFolder(filing, folder), page, onPaper)).line);
  return { folder, paths: lines.map(({ path }) => join(folder, path)), out: join(temporaryFolder(), "fleet") };
}

const bytesIn = (out: string) =>
  Object.fromEntries(readdirSync(out).map((name) => [name, readFileSync(join(out, name)).toString("base64")]));

test("a file a year of the work, each record in one, with the digest of its page; the same again byte for byte", async () => {
  const { folder, paths, out } = await folderOf("2024-03-01", "2025-03-01", undefined);
  const { written, problems } = await writeYearlyFiles(disks, folder, out);
  expect(problems.all).toEqual([]);
  expect(written).toEqual(
    ["2024", "2025", "no-day"].map((year) => ({ path: `${out}/calibrations-${year}.parquet`, records: 1 })),
  );
  const asked = "SELECT calibration, is_last, lower(hex(file_sha256)) AS sha FROM '*.parquet' ORDER BY calibration";
  const [rows] = await askedOfDuckDb(out, [asked]);
  const digests = paths.map((path) => fileDigest(readFileSync(path)).sha256);
  expect(rows).toEqual([0, 1, 2].map((at) => ({ calibration: `C-${at}`, is_last: at === 1, sha: digests[at] })));
  const before = bytesIn(out);
  await writeYearlyFiles(disks, folder, out);
  expect(bytesIn(out)).toEqual(before);
});

test("one page that is not the one that was filed stops all, and earlier files stay, whether the index knows it or not", async () => {
  const { folder, paths, out } = await folderOf("2024-03-01", "2025-03-01");
  await writeYearlyFiles(disks, folder, out);
  const before = bytesIn(out);
  writeFileSync(paths[1] as string, "another page");
  const touched = await writeYearlyFiles(disks, folder, out);
  // As on a disk whose times do not show the change: then only the reading of the page tells.
  const unnoticed = diskWith({ changedAt: async (path) => (path.endsWith(".html") ? 0 : filing.changedAt(path)) });
  expect((await readIndex(unnoticed, folder)).doubts).toEqual([]);
  const read = await writeYearlyFiles({ ...disks, filing: unnoticed }, folder, out);
  for (const { written, problems } of [touched, read]) {
    expect(written).toBeUndefined();
    expect(problems.all.map(sentence)[0]).toContain(`${paths[1]}: the page is not the one that was filed`);
    expect(bytesIn(out)).toEqual(before);
  }
});

test("nothing is written over but an earlier file of the same folder", async () => {
  const { folder, out } = await folderOf("2024-03-01");
  const other = await folderOf("2023-03-01");
  await writeYearlyFiles(disks, other.folder, out);
  const refused = await writeYearlyFiles(disks, folder, out);
  expect(refused.written).toBeUndefined();
  expect(refused.problems.all.map(sentence)[0]).toContain("no yearly file of this filing folder");
  expect(readdirSync(out)).toEqual(["calibrations-2023.parquet"]);
});

test("a year whose only record was withdrawn is emptied: its row would go on counting", async () => {
  const { folder, out } = await folderOf("2024-03-01", "2025-03-01");
  await writeYearlyFiles(disks, folder, out);
  const withdrawal = { tag: "LT-1", calibration: "C-0", revision: 1, by: "A. Example", reason: "another loop's" };
  await withdrawPage(filingFolder(filing, folder), withdrawal);
  const { written } = await writeYearlyFiles(disks, folder, out);
  expect(written?.map(({ records }) => records)).toEqual([0, 1]);
  const [rows] = await askedOfDuckDb(out, ["SELECT calibration FROM '*.parquet'"]);
  expect(rows).toEqual([{ calibration: "C-1" }]);
});

test("options of page and table alone, a folder that is none and a disk that refuses are told", async () => {
  const { folder, out } = await folderOf("2024-03-01");
  const both = await writeYearlyFiles(disks, folder, out, { on: "2025-01-01", decimalMark: "comma" });
  expect(both.problems.all.map(({ code }) => code)).toEqual(["options/overridden", "options/overridden"]);
  const none = await writeYearlyFiles(disks, temporaryFolder(), out);
  expect(none.problems.all.map(({ code }) => code)).toEqual(["options/not-a-filing-folder"]);
  const refusing = { streamTogether: () => Promise.reject(new CannotWrite("no room")) };
  const full = await writeYearlyFiles({ filing, plain: refusing }, folder, out);
  expect([both.written, none.written, full.written]).toEqual([undefined, undefined, undefined]);
  expect(full.problems.all.map(sentence)[0]).toContain("nothing could be written there: no room");
});
