import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { decideFinding } from "../../src/filing/decide-finding.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { amended, diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

const disk = diskWith();
const words = { decision: "no impact, because the tank was empty", by: "A. Example" };

async function filed(isOutOfTolerance: boolean) {
  const path = temporaryFolder();
  const folder = filingFolder(disk, path);
  const page = samplePage({ isOutOfTolerance });
  await filePage(folder, page, onPaper);
  return { path, folder, page };
}

test("what was decided is a line that names the page, and several may follow each other", async () => {
  const { folder, path } = await filed(true);
  const line = await decideFinding(folder, { tag: "LT-1", calibration: "C-1", ...words });
  const page = folder.ledger.filed({ tag: "LT-1", calibration: "C-1", revision: 1 });
  expect(line).toMatchObject({ number: 2, action: "decided", ...words, fileSha256: page?.fileSha256, revision: 1 });
  await decideFinding(folder, { tag: "LT-1", calibration: "C-1", ...words, decision: "the owner was told" });
  expect(folder.ledger.lines).toHaveLength(3);
  expect(await checkFolder(disk, path)).toEqual([]);
});

test("it is about the last revision", async () => {
  const { folder, page } = await filed(true);
  await filePage(folder, amended(page.record, "put right"), onPaper);
  const line = await decideFinding(folder, { tag: "LT-1", calibration: "C-1", ...words });
  expect(line).toMatchObject({ revision: 2, path: "LT-1/2026-03-04_C-1_r2.html" });
});

test("a loop found in tolerance needs no decision, and a record that is not there cannot have one", async () => {
  const { folder } = await filed(false);
  await expect(decideFinding(folder, { tag: "LT-1", calibration: "C-1", ...words })).rejects.toMatchObject({
    code: "filing/nothing-to-decide",
  });
  await expect(decideFinding(folder, { tag: "LT-1", calibration: "C-9", ...words })).rejects.toMatchObject({
    code: "filing/record-unknown",
  });
  expect(folder.ledger.lines).toHaveLength(1);
});

test("a page that is not the filed one any more is decided about by nobody", async () => {
  const { folder, path } = await filed(true);
  writeFileSync(join(path, "LT-1/2026-03-04_C-1_r1.html"), samplePage().bytes);
  await expect(decideFinding(folder, { tag: "LT-1", calibration: "C-1", ...words })).rejects.toMatchObject({
    code: "filing/page-unreadable",
    values: { says: "the page is not the one that was filed" },
  });
});
