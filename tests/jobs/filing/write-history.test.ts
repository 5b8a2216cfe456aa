import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { decideFinding } from "../../../src/filing/decide-finding.ts";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { CannotWrite } from "../../../src/jobs/disk.ts";
import { historyLines, historyRows } from "../../../src/jobs/filing/history-rows.ts";
import { historyOf, writeHistory } from "../../../src/jobs/filing/write-history.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { frozen } from "../../charts/frozen.ts";
import {
  amended,
  diskWith,
  onPaper,
  pageOf,
  samplePage,
  sampleRecord,
  temporaryFolder,
} from "../../filing/sample-pages.ts";

const filing = diskWith();
const disks = { filing, plain: nodeDisk };

async function folderOf(...days: readonly (string | undefined)[]): Promise<string> {
  const folder = temporaryFolder();
  for (const [index, performedOn] of days.entries())
    await filePage(filingFolder(filing, folder), samplePage({ calibration: `C-${index + 1}`, performedOn }), onPaper);
  return folder;
}

test("a tag over its filed pages is a page, with the last revision of each calibration", async () => {
  const folder = await folderOf("2024-03-04", "2025-03-04");
  const record = sampleRecord({ calibration: "C-3", performedOn: "2026-03-04" });
  const third = pageOf(record);
  await filePage(filingFolder(filing, folder), third, onPaper);
  await filePage(filingFolder(filing, folder), amended(third.record, "put right"), onPaper);
  const out = join(folder, "page.html");
  const { history, problems } = await writeHistory(disks, folder, { tag: "LT-1", out });
  expect(problems.all).toEqual([]);
  expect(history?.overTheYears.records.map(({ calibration, revision }) => [calibration, revision])).toEqual([
    ["C-1", 1],
    ["C-2", 1],
    ["C-3", 2],
  ]);
  expect(readFileSync(out, "utf8")).toContain("<h1><bdi>LT-1</bdi></h1>");
});

test("who signed each record, and what was decided about a finding, is told with it", async () => {
  const folder = temporaryFolder();
  const found = samplePage({ isOutOfTolerance: true });
  const { line } = await filePage(filingFolder(filing, folder), found, onPaper);
  const { tag, calibration } = line;
  await decideFinding(filingFolder(filing, folder), { tag, calibration, by: "A. Example", decision: "no impact" });
  const { history } = await writeHistory(disks, folder, { tag });
  expect(history?.notes?.[calibration]).toEqual({
    signedBy: [`on paper: ${onPaper.paper}`],
    decided: "no impact (A. Example)",
  });
});

test("without a name for it no page is written", async () => {
  const plain = { ...nodeDisk, writeTogether: () => Promise.reject(new Error("nothing was to be written")) };
  const { history } = await writeHistory({ filing, plain }, await folderOf("2024-03-04"), { tag: "LT-1" });
  expect(history?.overTheYears.records).toHaveLength(1);
});

test("a page that is not the one that was filed is told, and there is no history without it", async () => {
  const folder = await folderOf("2024-03-04", "2025-03-04");
  writeFileSync(join(folder, "LT-1/2024-03-04_C-1_r1.html"), "another");
  const { history, problems } = await writeHistory(disks, folder, { tag: "LT-1" });
  expect([history, problems.hasStop]).toEqual([undefined, true]);
  expect(problems.all.map(sentence)[0]).toContain("the page is not the one that was filed");
});

test("a folder that is none, a tag that is not there, records without a day: each is told", async () => {
  const folder = await folderOf("2024-03-04");
  const told = async (where: string, tag: string) => {
    const { history, problems } = await writeHistory(disks, where, { tag });
    expect(history).toBeUndefined();
    expect(problems.hasStop).toBe(true);
    return problems.all.map(sentence).join("\n");
  };
  expect(await told(temporaryFolder(), "LT-1")).toContain("there is no ledger.jsonl in it");
  expect(await told(folder, "LT-9")).toBe(
    'command line: no record of this tag is filed there; read "LT-9"; accepted: LT-1',
  );
  expect(await told(await folderOf(undefined), "LT-1")).toContain(
    "no record of the tag says on which day the work was done",
  );
});

test("no page is written over a record, nor where the disk refuses", async () => {
  const folder = await folderOf("2024-03-04");
  const record = join(folder, "LT-1/2024-03-04_C-1_r1.html");
  const before = readFileSync(record, "utf8");
  const over = await writeHistory(disks, folder, { tag: "LT-1", out: record });
  expect(over.problems.all.map(sentence)[0]).toMatch(/: a record lies there; accepted: another name for the page$/u);
  expect(readFileSync(record, "utf8")).toBe(before);
  const plain = { ...nodeDisk, writeTogether: () => Promise.reject(new CannotWrite("no room")) };
  const refused = await writeHistory({ filing, plain }, folder, { tag: "LT-1", out: join(folder, "page.html") });
  expect(refused.problems.all.map(sentence)[0]).toContain("nothing could be written there: no room");
});

test("no page is written over what the folder keeps", async () => {
  const folder = await folderOf("2024-03-04", "2025-03-04");
  for (const name of ["ledger.jsonl", "index.jsonl"]) {
    const out = join(folder, name);
    const before = readFileSync(out, "utf8");
    const { problems } = await writeHistory(disks, folder, { tag: "LT-1", out });
    expect(problems.all.map(({ code }) => code)).toEqual(["options/record-there"]);
    expect(readFileSync(out, "utf8")).toBe(before);
  }
});

test("settings that are typed count; one that cannot be read stops before anything is opened", async () => {
  const folder = await folderOf("2024-03-04", "2025-03-04", "2026-03-04");
  const { history } = await writeHistory(disks, folder, { tag: "LT-1", settings: { extendBy: "1.5" } });
  expect(history?.overTheYears.settings.extendBy).toBe(1.5);
  const wrong = await writeHistory(disks, folder, { tag: "LT-1", settings: { extendBy: "many" } });
  expect(wrong.history).toBeUndefined();
  expect(wrong.problems.all.map(sentence)).toEqual([
    'command line: the option --extend-by cannot be read; read "many"; accepted: a factor from 1 to 3',
  ]);
});

const recordOn = (performedOn: string | undefined, description?: string) => {
  const record = sampleRecord({ calibration: `C-${performedOn}`, performedOn });
  return sealRecord({ ...record, instrument: { ...record.instrument, ...(description && { description }) } });
};

test("what the loop is comes from the latest record, whatever the order they are given in", () => {
  const history = historyOf(frozen([recordOn("2025-01-07", "new words"), recordOn("2024-01-07", "old words")]));
  expect(history?.description).toBe("new words");
  expect(history?.overTheYears.records.map(({ performedOn }) => performedOn)).toEqual(["2024-01-07", "2025-01-07"]);
});

test("of two records of one day the later made is the latest", () => {
  const both = frozen([recordOn("2025-01-07", "in the morning"), recordOn("2025-01-07", "in the evening")]);
  expect(historyOf(both)?.description).toBe("in the evening");
});

test("records without a day are left out and told; without any day there is no history", () => {
  const history = historyOf([recordOn(undefined), recordOn("2025-01-07")]);
  expect(history?.overTheYears.leftOut).toEqual(["C-undefined: its day is not stated"]);
  expect(historyOf([recordOn(undefined)])).toBeUndefined();
  expect(historyOf([])).toBeUndefined();
});

test("a history has decimal commas where they are asked for, on the page, in its picture and in the terminal", async () => {
  const folder = await folderOf("2024-03-04", "2025-03-04", "2026-03-04");
  const out = join(folder, "page.html");
  const { history } = await writeHistory(disks, folder, { tag: "LT-1", out, decimalMark: "comma" });
  if (history === undefined) throw new TypeError("no history");
  const page = readFileSync(out, "utf8");
  const body = page
    .slice(page.indexOf("<main>"))
    .replace(/<cite>.*?<\/cite>/gsu, "")
    .replace(/<[^>]*>/gu, "\n");
  expect(body.match(/.*\d\.\d.*/gu)).toBeNull();
  expect(body).toMatch(/\d,\d/u);
  const terminal = [...historyRows(history).flat(), ...historyLines(history)].join("\n");
  expect(terminal).toMatch(/\d,\d/u);
  expect(terminal).not.toMatch(/\d\.\d/u);
});
