import { expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { listWhereUsed } from "../../../src/jobs/filing/list-where-used.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, samplePage, temporaryFolder } from "../../filing/sample-pages.ts";

async function listed(standard: string, certificate?: string) {
  const folder = temporaryFolder();
  for (const page of [samplePage(), samplePage({ tag: "LT-2", calibration: "C-2", isOutOfTolerance: true })]) {
    await filePage(filingFolder(diskWith(), folder), page, onPaper);
  }
  const { rows, problems } = await listWhereUsed(diskWith(), folder, { standard, certificate });
  return { rows, told: problems.all.map(sentence) };
}

test("a row a record, with its page and the certificate that it was made by", async () => {
  const [{ standard, certificate } = { standard: "", certificate: "" }] = samplePage().record.standards;
  const { rows, told } = await listed(standard);
  expect(told).toEqual([]);
  expect(rows).toEqual([
    ["performed", "tag", "record", "revision", "result", "certificate", "page"],
    ["2026-03-04", "LT-1", "C-1", "1", expect.any(String), certificate, "LT-1/2026-03-04_C-1_r1.html"],
    ["2026-03-04", "LT-2", "C-2", "1", "fail", certificate, "LT-2/2026-03-04_C-2_r1.html"],
  ]);
});

test("a standard, or a certificate, that no record names is told with those that are", async () => {
  const [{ standard, certificate } = { standard: "", certificate: "" }] = samplePage().record.standards;
  expect((await listed("BAR-9")).told).toEqual([
    `command line: no filed record rests on it; read "BAR-9"; accepted: ${standard}`,
  ]);
  expect((await listed(standard, "K-9")).told).toEqual([
    `command line: no filed record rests on it; read "K-9"; accepted: ${certificate}`,
  ]);
});

test("a folder that is none is told", async () => {
  const { problems } = await listWhereUsed(diskWith(), "/nowhere", { standard: "BAR-1" });
  expect(problems.all.map(({ code }) => code)).toEqual(["options/not-a-filing-folder"]);
});
