import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { withdrawFiledPage } from "../../../src/jobs/filing/withdraw-filed-page.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

const asked = { tag: "LT-1", calibration: "C-1", revision: "1", reason: "a slip", by: "A. Example" };

async function withdrawn(changes: Partial<typeof asked>, isFiled = true) {
  const folder = temporaryFolder();
  if (isFiled) await filePage(filingFolder(diskWith(), folder), samplePage(), onPaper);
  const { says, problems } = await withdrawFiledPage(diskWith(), folder, { ...asked, ...changes });
  return { says, codes: problems.all.map(({ code }) => code) };
}

test("what was entered is said", async () => {
  expect(await withdrawn({})).toEqual({
    says: "line 2 of the ledger: LT-1/2026-03-04_C-1_r1.html counts no more; it stays where it lies",
    codes: [],
  });
});

test("every word that is missing is told at once, and nothing is entered", async () => {
  expect(await withdrawn({ revision: "one", reason: " ", by: "" })).toEqual({
    says: undefined,
    codes: ["options/not-understood", "filing/words-missing", "filing/words-missing"],
  });
  expect((await withdrawn({}, false)).codes).toEqual(["options/not-a-filing-folder"]);
  expect((await withdrawn({ revision: "3" })).codes).toEqual(["filing/revision-unknown"]);
});
