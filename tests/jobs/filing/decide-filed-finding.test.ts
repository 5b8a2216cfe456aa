import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { decideFiledFinding } from "../../../src/jobs/filing/decide-filed-finding.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

const disk = diskWith();
const words = { decision: "no impact, because the tank was empty", by: "A. Example" };

async function folderOf(isOutOfTolerance: boolean): Promise<string> {
  const folder = temporaryFolder();
  await filePage(filingFolder(disk, folder), samplePage({ isOutOfTolerance }), onPaper);
  return folder;
}

test("what was decided is entered, and said", async () => {
  const { says, problems } = await decideFiledFinding(disk, await folderOf(true), {
    ...{ tag: "LT-1", calibration: "C-1" },
    ...words,
  });
  expect(problems.all).toEqual([]);
  expect(says).toBe("line 2 of the ledger: decided about LT-1, C-1, revision 1");
});

test.each([
  ["nothing to decide", false, { tag: "LT-1", calibration: "C-1", ...words }, "the loop was found in tolerance"],
  [
    "no such record",
    true,
    { tag: "LT-1", calibration: "C-7", ...words },
    "no record of calibration C-7 of the tag LT-1",
  ],
  ["no words", true, { tag: "LT-1", calibration: "C-1", decision: " ", by: "A" }, "the option --decision is empty"],
  ["no name", true, { tag: "LT-1", calibration: "C-1", decision: "none", by: "" }, "the option --by is empty"],
] as const)("%s is a problem", async (_, isOutOfTolerance, decided, told) => {
  const { says, problems } = await decideFiledFinding(disk, await folderOf(isOutOfTolerance), decided);
  expect(says).toBeUndefined();
  expect(problems.all.map(sentence).join("\n")).toContain(told);
});

test("a folder without a ledger is a problem, and none is made", async () => {
  const folder = temporaryFolder();
  const { problems } = await decideFiledFinding(disk, folder, { tag: "LT-1", calibration: "C-1", ...words });
  expect(problems.all.map(({ code }) => code)).toEqual(["options/not-a-filing-folder"]);
  expect(await disk.namesIn(folder)).toEqual([]);
});
