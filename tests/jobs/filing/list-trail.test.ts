import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { listTrail } from "../../../src/jobs/filing/list-trail.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

async function folderOfTwo() {
  const folder = temporaryFolder();
  for (const page of [samplePage(), samplePage({ tag: "LT-2", calibration: "C-2" })]) {
    await filePage(filingFolder(diskWith(), folder), page, onPaper);
  }
  return folder;
}

test("a row a line of the ledger, of all loops or of one", async () => {
  const folder = await folderOfTwo();
  const { rows, problems } = await listTrail(diskWith(), folder, {});
  expect(problems.all).toEqual([]);
  expect(rows.map((row) => row.slice(2, 5))).toEqual([
    ["what", "tag", "record"],
    ["filed", "LT-1", "C-1, revision 1"],
    ["filed", "LT-2", "C-2, revision 1"],
  ]);
  expect((await listTrail(diskWith(), folder, { tag: "LT-2" })).trail.map(({ number }) => number)).toEqual([2]);
});

test("a tag that no line names is told with those that are, and a folder that is none", async () => {
  const { problems } = await listTrail(diskWith(), await folderOfTwo(), { tag: "LT-3" });
  expect(problems.all.map(sentence)).toEqual([
    'command line: no record of this tag is filed there; read "LT-3"; accepted: LT-1, LT-2',
  ]);
  expect((await listTrail(diskWith(), "/nowhere", {})).problems.all.map(({ code }) => code)).toEqual([
    "options/not-a-filing-folder",
  ]);
});
