import { expect, test } from "vitest";
import { changeTag } from "../../src/filing/change-tag.ts";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { decideFinding } from "../../src/filing/decide-finding.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { currentRecordsByTag } from "../../src/filing/latest-records.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

const said = { tag: "LT-1", by: "A. Example", reason: "new tags" };

async function filed() {
  const path = temporaryFolder();
  const folder = filingFolder(diskWith(), path);
  await filePage(folder, samplePage({ isOutOfTolerance: true }), onPaper);
  return { path, folder };
}

test("a renaming stands in the ledger without a doubt, and the loop is found by its new name", async () => {
  const { path, folder } = await filed();
  const line = await changeTag(folder, said, { action: "renamed", to: "LT-1001" });
  expect(line).toMatchObject({ action: "renamed", number: 2, to: "LT-1001", ...said });
  const { entries } = await readIndex(diskWith(), path);
  expect([...currentRecordsByTag(entries).keys()]).toEqual(["LT-1001"]);
  expect(await checkFolder(diskWith(), path)).toEqual([]);
  const decided = { tag: "LT-1001", calibration: "C-1", decision: "no impact", by: "A. Example" };
  expect(await decideFinding(folder, decided)).toMatchObject({ tag: "LT-1", calibration: "C-1" });
  await expect(changeTag(folder, said, { action: "retired" })).rejects.toMatchObject({ code: "filing/tag-unknown" });
  await changeTag(folder, { ...said, tag: "LT-1001" }, { action: "retired" });
  expect(await checkFolder(diskWith(), path)).toEqual([]);
});

test("a sensor goes onto a loop that is known, and a new name does not look like that of another loop", async () => {
  const { folder } = await filed();
  await expect(changeTag(folder, said, { action: "transferred", to: "LT-2" })).rejects.toMatchObject({
    ...{ code: "filing/tag-unknown", values: { tag: "LT-2" } },
  });
  await filePage(folder, samplePage({ tag: "LT-2" }), onPaper);
  await changeTag(folder, said, { action: "transferred", to: "LT-2" });
  await expect(changeTag(folder, said, { action: "renamed", to: "lt-2" })).rejects.toMatchObject({
    code: "filing/tag-like-another",
  });
  expect(await changeTag(folder, said, { action: "renamed", to: "lt-1" })).toMatchObject({ to: "lt-1" });
});
