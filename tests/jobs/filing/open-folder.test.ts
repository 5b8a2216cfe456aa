import { appendFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { openFolder } from "../../../src/jobs/filing/open-folder.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

const disk = diskWith();

async function opened(folder: string) {
  const problems = new ProblemList();
  const index = await openFolder(disk, folder, problems);
  return { index, told: problems.all.map(sentence), hasStop: problems.hasStop };
}

test("a folder into which records were filed gives them in short", async () => {
  const folder = temporaryFolder();
  await filePage(filingFolder(disk, folder), samplePage(), onPaper);
  const { index, told } = await opened(folder);
  expect(index?.entries.map(({ summary }) => summary.tag)).toEqual(["LT-1"]);
  expect(told).toEqual([]);
});

test("a folder without a ledger is told", async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "LT-1"));
  const { index, told, hasStop } = await opened(folder);
  expect([index, hasStop]).toEqual([undefined, true]);
  expect(told[0]).toBe(
    `${folder}: there is no ledger.jsonl in it; accepted: a folder into which spanwright file put records`,
  );
});

test("a folder that is not there is told as that", async () => {
  const folder = join(temporaryFolder(), "nowhere");
  const { told } = await opened(folder);
  expect(told).toEqual([
    `${folder}: there is no such folder; accepted: a folder into which spanwright file put records`,
  ]);
});

test("where a page is gone or a line is none nothing is given, and each is told", async () => {
  const folder = temporaryFolder();
  for (const calibration of ["C-1", "C-2"])
    await filePage(filingFolder(disk, folder), samplePage({ calibration }), onPaper);
  rmSync(join(folder, "LT-1/2026-03-04_C-1_r1.html"));
  rmSync(join(folder, "index.jsonl"));
  appendFileSync(join(folder, "ledger.jsonl"), "{}\n");
  const { index, told, hasStop } = await opened(folder);
  expect([index, hasStop]).toEqual([undefined, true]);
  expect(told.map((words) => words.split(":")[0])).toEqual([
    `${folder}/ledger.jsonl`,
    `${folder}/LT-1/2026-03-04_C-1_r1.html`,
  ]);
});
