import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { restorePage, withdrawPage } from "../../src/filing/withdraw-page.ts";
import { amended, diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

const disk = diskWith();
const words = { by: "A. Example", reason: "the page of another loop" };
const first = { tag: "LT-1", calibration: "C-1", revision: 1, ...words };

async function filed() {
  const path = temporaryFolder();
  const folder = filingFolder(disk, path);
  const page = samplePage();
  await filePage(folder, page, onPaper);
  return { path, folder, page };
}

test("a page that was withdrawn is in no index, stays where it lies, and is no doubt", async () => {
  const { path, folder } = await filed();
  const line = await withdrawPage(folder, first);
  expect(line).toMatchObject({ action: "withdrawn", number: 2, ...words });
  expect((await readIndex(disk, path)).entries).toEqual([]);
  expect(existsSync(join(path, line.path))).toBe(true);
  expect(await checkFolder(disk, path)).toEqual([]);
});

test("its place is free for another page, beside it, and for that one only", async () => {
  const { path, folder } = await filed();
  await withdrawPage(folder, first);
  const { line, outcome } = await filePage(folder, samplePage({}, "as it should have been"), onPaper);
  expect([outcome, line.path]).toEqual(["filed", "LT-1/2026-03-04_C-1_r1_again2.html"]);
  await expect(filePage(folder, samplePage({}, "once more"), onPaper)).rejects.toMatchObject({
    code: "filing/issued-already",
  });
  expect((await readIndex(disk, path)).entries).toMatchObject([{ path: line.path }]);
  expect(await checkFolder(disk, path)).toEqual([]);
});

test("what does not count cannot be withdrawn, nor what a later revision rests on", async () => {
  const { folder, page } = await filed();
  await expect(withdrawPage(folder, { ...first, revision: 2 })).rejects.toMatchObject({
    code: "filing/revision-unknown",
  });
  await filePage(folder, amended(page.record, "put right"), onPaper);
  await expect(withdrawPage(folder, first)).rejects.toMatchObject({ code: "filing/rested-upon", values: { later: 2 } });
  await withdrawPage(folder, { ...first, revision: 2 });
  await withdrawPage(folder, first);
  await expect(withdrawPage(folder, first)).rejects.toMatchObject({ code: "filing/revision-unknown" });
});

test("a page withdrawn in error counts again, until another has its place", async () => {
  const { path, folder } = await filed();
  await withdrawPage(folder, first);
  expect(await restorePage(folder, first)).toMatchObject({ action: "restored", number: 3 });
  expect((await readIndex(disk, path)).entries).toMatchObject([{ number: 1 }]);
  expect(await checkFolder(disk, path)).toEqual([]);
  await expect(restorePage(folder, first)).rejects.toMatchObject({ code: "filing/nothing-withdrawn" });
  await expect(filePage(folder, samplePage({}, "another"), onPaper)).rejects.toMatchObject({
    code: "filing/issued-already",
  });
  await withdrawPage(folder, first);
  await filePage(folder, samplePage({}, "another"), onPaper);
  await expect(restorePage(folder, first)).rejects.toMatchObject({ code: "filing/issued-already" });
});
