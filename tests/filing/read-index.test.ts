import { chmodSync, existsSync, readFileSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { changeTag } from "../../src/filing/change-tag.ts";
import { decideFinding } from "../../src/filing/decide-finding.ts";
import { disposePages } from "../../src/filing/dispose-pages.ts";
import { filePage } from "../../src/filing/file-page.ts";
import type { FilingDisk } from "../../src/filing/filing-disk.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import type { IndexEntry } from "../../src/filing/index-entry.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { withdrawPage } from "../../src/filing/withdraw-page.ts";
import { amended, diskWith, onPaper, samplePage, settled, temporaryFolder } from "./sample-pages.ts";

/** A disk that counts the pages that are read. */
function countingDisk(changes: Partial<FilingDisk> = {}) {
  const pages: string[] = [];
  const { read } = diskWith();
  const disk = diskWith({
    read: (path) => {
      if (path.endsWith(".html")) pages.push(path);
      return read(path);
    },
    ...changes,
  });
  return { disk, pages };
}

/** Two loops, one of them amended, the other found out of tolerance and decided about. */
async function filedFolder(): Promise<string> {
  const path = temporaryFolder();
  const folder = filingFolder(diskWith(), path);
  const first = samplePage();
  for (const page of [
    first,
    samplePage({ tag: "LT-2", calibration: "C-2", isOutOfTolerance: true }),
    amended(first.record, "put right"),
  ]) {
    await filePage(folder, page, onPaper);
  }
  await decideFinding(folder, { tag: "LT-2", calibration: "C-2", decision: "no impact", by: "A. Example" });
  await settled(path);
  return path;
}

test("an index that was kept at filing is enough: no page is read", async () => {
  const folder = await filedFolder();
  const { disk, pages } = countingDisk();
  const { entries, decisions, doubts } = await readIndex(disk, folder);
  expect(entries.map(({ number, summary }) => [number, summary.tag, summary.revision])).toEqual([
    [1, "LT-1", 1],
    [2, "LT-2", 1],
    [3, "LT-1", 2],
  ]);
  expect(decisions.map(({ tag, decision }) => [tag, decision])).toEqual([["LT-2", "no impact"]]);
  expect([doubts, pages]).toEqual([[], []]);
});

function changedEntry(text: string, change: (entry: IndexEntry) => object): string {
  const lines = text.split("\n");
  return lines.with(2, JSON.stringify(change(JSON.parse(lines[2] ?? "")))).join("\n");
}

const damaged: readonly (readonly [string, (text: string) => string | undefined, number])[] = [
  ["is gone", () => undefined, 3],
  ["is empty", () => "", 3],
  ["belongs to another ledger", (text) => text.replace(/"page":"..../u, '"page":"0000'), 3],
  ["lacks a line", (text) => text.split("\n").toSpliced(2, 1).join("\n"), 1],
  ["has a last line that was not finished", (text) => text.slice(0, -50), 1],
  ["has a line of another page", (text) => text.replace('"path":"LT-2/', '"path":"LT-3/'), 1],
  [
    "has a line without what makes an entry",
    (text) => changedEntry(text, ({ number, path, fileSha256 }) => ({ number, path, fileSha256 })),
    1,
  ],
  ["has a day that is a number", (text) => text.replace('"performedOn":"2026-03-04"', '"performedOn":5'), 1],
  ["has standards that are none", (text) => changedEntry(text, (entry) => ({ ...entry, standards: [null] })), 1],
  ["has something of its own", (text) => changedEntry(text, (entry) => ({ ...entry, more: "x" })), 1],
  ["has a line that is nonsense", (text) => text.split("\n").with(2, "nonsense").join("\n"), 1],
];

test.each(damaged)("an index that %s is made whole from the pages, once", async (_, change, read) => {
  const folder = await filedFolder();
  const file = join(folder, "index.jsonl");
  const whole = readFileSync(file, "utf8");
  const expected = await readIndex(diskWith(), folder);
  const text = change(whole);
  if (text === undefined) rmSync(file);
  else {
    writeFileSync(file, text);
    await settled(folder);
  }
  const { disk, pages } = countingDisk();
  expect(await readIndex(disk, folder)).toEqual(expected);
  expect(pages).toHaveLength(read);
  expect(readFileSync(file, "utf8")).toBe(whole);
  await settled(folder);
  expect((await readIndex(disk, folder)).entries).toHaveLength(3);
  expect(pages).toHaveLength(read);
});

test("a page that was touched since the index was written is read again, and the index is believed of it afterwards", async () => {
  const folder = await filedFolder();
  const whole = readFileSync(join(folder, "index.jsonl"), "utf8");
  const page = join(folder, "LT-2/2026-03-04_C-2_r1.html");
  const { disk, pages } = countingDisk();
  chmodSync(page, 0o640);
  expect((await readIndex(disk, folder)).doubts).toEqual([]);
  expect(pages).toEqual([page]);
  await settled(folder);
  expect((await readIndex(disk, folder)).entries).toHaveLength(3);
  expect(pages).toEqual([page]);
  expect(readFileSync(join(folder, "index.jsonl"), "utf8")).toBe(whole);
  writeFileSync(page, readFileSync(page, "utf8").replace("LT-2", "LT-3"));
  utimesSync(page, new Date(0), new Date(0));
  expect((await readIndex(disk, folder)).doubts).toMatchObject([
    { place: "LT-2/2026-03-04_C-2_r1.html", says: "the page is not the one that was filed" },
  ]);
});

test("a ledger or an index that cannot be read ends nothing: the one is told, the other made from the pages", async () => {
  const folder = await filedFolder();
  const { read } = diskWith();
  const without = (name: string) =>
    diskWith({ read: (path) => (path.endsWith(name) ? Promise.reject(new Error("EACCES")) : read(path)) });
  expect(await readIndex(without("ledger.jsonl"), folder)).toEqual({
    ...{ entries: [], decisions: [], tagLines: [] },
    doubts: [{ about: "ledger", place: "ledger.jsonl", says: "it cannot be read: EACCES" }],
  });
  const { entries, doubts } = await readIndex(without("index.jsonl"), folder);
  expect([entries.length, doubts]).toEqual([3, []]);
});

test("a page that was filed after the index was lost is added to one that is made anew", async () => {
  const folder = await filedFolder();
  rmSync(join(folder, "index.jsonl"));
  await filePage(filingFolder(diskWith(), folder), samplePage({ calibration: "C-3" }), onPaper);
  expect((await readIndex(diskWith(), folder)).entries.map(({ number }) => number)).toEqual([1, 2, 3, 5]);
});

test("a page that is missing or was changed gives no entry, and is told", async () => {
  const folder = await filedFolder();
  rmSync(join(folder, "index.jsonl"));
  rmSync(join(folder, "LT-2/2026-03-04_C-2_r1.html"));
  writeFileSync(join(folder, "LT-1/2026-03-04_C-1_r1.html"), samplePage({}, "another").bytes);
  const { entries, doubts } = await readIndex(diskWith(), folder);
  expect(entries.map(({ number }) => number)).toEqual([3]);
  expect(doubts.map(({ place, says }) => `${place}: ${says}`)).toEqual([
    "LT-1/2026-03-04_C-1_r1.html: the page is not the one that was filed",
    "LT-2/2026-03-04_C-2_r1.html: the page is missing",
  ]);
  expect(existsSync(join(folder, "index.jsonl"))).toBe(false);
});

test("a folder that cannot be written to is read all the same", async () => {
  const folder = await filedFolder();
  rmSync(join(folder, "index.jsonl"));
  const refused = () => Promise.reject(Object.assign(new Error("read-only"), { code: "EROFS" }));
  const { entries } = await readIndex(diskWith({ createOnce: refused, replace: refused }), folder);
  expect(entries).toHaveLength(3);
  expect(existsSync(join(folder, "index.jsonl"))).toBe(false);
});

test("a folder without a ledger holds nothing", async () => {
  expect(await readIndex(diskWith(), temporaryFolder())).toEqual({
    entries: [],
    decisions: [],
    tagLines: [],
    doubts: [],
  });
});

test("no byte of the index that is changed changes what is said: the page is read, or it is told", async () => {
  const folder = await filedFolder();
  const path = join(folder, "index.jsonl");
  const whole = readFileSync(path);
  // A disk to read from: the index is not made anew, so that each change meets the ledger alone.
  const disk = diskWith({ createOnce: () => Promise.reject(new Error("EROFS")) });
  const { entries } = await readIndex(disk, folder);
  for (let change = 0; change < 300; change += 1) {
    const place = (change * 7919) % whole.length;
    const bytes = Buffer.from(whole);
    bytes[place] = (bytes[place] ?? 0) ^ (1 << (change % 7));
    writeFileSync(path, bytes);
    const found = await readIndex(disk, folder);
    if (found.doubts.length === 0) expect([change, found.entries]).toEqual([change, entries]);
  }
});

test("lines that were cut off the end of the ledger show by the rows of the index", async () => {
  const folder = await filedFolder();
  const path = join(folder, "ledger.jsonl");
  writeFileSync(path, `${readFileSync(path, "utf8").split("\n").slice(0, 2).join("\n")}\n`);
  expect((await readIndex(diskWith(), folder)).doubts).toMatchObject([
    { says: "it ends with line 2, and index.jsonl has the row of line 3: lines were taken off its end" },
  ]);
});

test("a folder as of a past day: what was filed, withdrawn and said until then, without what was disposed of since", async () => {
  const path = temporaryFolder();
  let day = "2026-04-01";
  const disk = diskWith({ now: () => `${day}T10:00:00.000+02:00` });
  const folder = filingFolder(disk, path);
  await filePage(folder, samplePage(), onPaper);
  day = "2026-05-01";
  await filePage(folder, samplePage({ calibration: "C-2" }), onPaper);
  day = "2026-06-01";
  const words = { by: "A. Example", reason: "a slip" };
  await withdrawPage(folder, { tag: "LT-1", calibration: "C-1", revision: 1, ...words });
  day = "2026-07-01";
  await changeTag(folder, { tag: "LT-1", ...words }, { action: "renamed", to: "LT-9" });
  const at = async (on: string) =>
    (await readIndex(disk, path, on)).entries.map(({ summary }) => `${summary.tag} ${summary.calibration}`);
  expect(await at("2026-03-31")).toEqual([]);
  expect(await at("2026-04-01")).toEqual(["LT-1 C-1"]);
  expect(await at("2026-05-31")).toEqual(["LT-1 C-1", "LT-1 C-2"]);
  expect(await at("2026-06-01")).toEqual(["LT-1 C-2"]);
  expect(await at("2026-07-01")).toEqual(["LT-9 C-2"]);
  day = "2026-08-01";
  await disposePages(folder, new Set([2]), { ...words, before: "2027-01-01" });
  expect(await readIndex(disk, path, "2026-07-31")).toMatchObject({ entries: [], disposedSince: 1, doubts: [] });
});
