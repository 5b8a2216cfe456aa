import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { disposePages, pagesToDispose } from "../../src/filing/dispose-pages.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { type FilingFolder, filingFolder } from "../../src/filing/filing-folder.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { withdrawPage } from "../../src/filing/withdraw-page.ts";
import { entry, phaseInShort } from "./sample-entries.ts";
import { amended, diskWith, onPaper, samplePage, temporaryFolder } from "./sample-pages.ts";

const disposal = { before: "2026-04-01", by: "A. Example", reason: "kept long enough" };
const held = { decisions: [], tagLines: [] };

test("a page that is gone by the ledger is no doubt; one that is back is, and goes with the next disposal", async () => {
  const path = temporaryFolder();
  const folder = filingFolder(diskWith(), path);
  const first = samplePage();
  const second = amended(first.record, "put right");
  const later = samplePage({ calibration: "C-2", performedOn: "2026-05-04" });
  for (const page of [first, second, later]) await filePage(folder, page, onPaper);
  const numbers = pagesToDispose(await readIndex(diskWith(), path), disposal.before);
  expect([...numbers]).toEqual([1, 2]);
  const { lines } = await disposePages(folder, numbers, disposal);
  expect(lines).toMatchObject([{ action: "disposed", number: 4, reason: disposal.reason }, { number: 5 }]);
  expect(lines.map((line) => existsSync(join(path, line.path)))).toEqual([false, false]);
  expect(await checkFolder(diskWith(), path)).toEqual([]);
  expect((await readIndex(diskWith(), path)).entries).toMatchObject([{ number: 3 }]);
  writeFileSync(join(path, lines[0]?.path ?? ""), first.bytes);
  expect(await checkFolder(diskWith(), path)).toMatchObject([
    { says: expect.stringContaining("line 4 disposed of it") },
  ]);
  await disposePages(folder, new Set(), disposal);
  expect(await checkFolder(diskWith(), path)).toEqual([]);
});

async function filedBy(folder: FilingFolder, page: ReturnType<typeof samplePage>) {
  const { line } = await filePage(folder, page, onPaper);
  return line;
}

test("a withdrawn page of that age goes too, and the PDF and the JSON beside each", async () => {
  const path = temporaryFolder();
  const folder = filingFolder(diskWith(), path);
  const [wrong, right] = [samplePage(), samplePage({ calibration: "C-2", performedOn: "2026-05-04" })];
  const [first, last] = [await filedBy(folder, wrong), await filedBy(folder, right)];
  await withdrawPage(folder, {
    tag: "LT-1",
    calibration: "C-1",
    revision: 1,
    by: "A. Example",
    reason: "another loop",
  });
  const beside = [first, last].map((line) => join(path, line.path.replace(/html$/u, "pdf")));
  for (const pdf of beside) writeFileSync(pdf, "%PDF");
  const { lines } = await disposePages(folder, new Set(), disposal);
  expect(lines).toMatchObject([{ action: "disposed", number: 4, path: first.path }]);
  expect([join(path, first.path), ...beside].map((one) => existsSync(one))).toEqual([false, false, true]);
  expect(await checkFolder(diskWith(), path)).toEqual([]);
  writeFileSync(beside[0] ?? "", "%PDF");
  expect((await disposePages(folder, new Set(), disposal)).leftOvers).toEqual([first.path.replace(/html$/u, "pdf")]);
});

test("the last record of a loop in use stays, and what nobody decided, and work of that day or of none", () => {
  const pages = [
    entry({ performedOn: "2026-03-31" }),
    entry({ performedOn: "2026-04-01" }),
    entry({ performedOn: null }),
    entry({ performedOn: "2026-01-01", asFound: phaseInShort("fail") }),
    entry({ tag: "LT-2", performedOn: "2025-01-01" }),
    entry({ performedOn: "2026-06-01" }),
  ];
  expect(pagesToDispose({ entries: pages, ...held }, "2026-04-01")).toEqual(new Set([pages[0]?.number]));
});
