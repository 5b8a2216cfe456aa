import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { filePage } from "../../../src/filing/file-page.ts";
import { filingFolder } from "../../../src/filing/filing-folder.ts";
import { CannotWrite, type NewFile } from "../../../src/jobs/disk.ts";
import { listDue } from "../../../src/jobs/filing/list-due.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { diskWith, onPaper, pageOf, sampleRecord } from "../../filing/sample-pages.ts";

const filing = diskWith();
const folder = mkdtempSync(join(tmpdir(), "spanwright-due-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const dates = { "LT-1": "2026-12-20", "LT-2": "2026-11-20", "LT-3": "2027-12-01" };
for (const [tag, nextDue] of Object.entries(dates)) {
  const record = { ...sampleRecord({ tag, calibration: `C-${tag}` }), nextDue };
  await filePage(filingFolder(filing, folder), pageOf(record), onPaper);
}

async function due(within: string, more: { calendar?: string; path?: string; refuses?: true } = {}) {
  const written: NewFile[] = [];
  const writeTogether = async (files: readonly NewFile[]) => {
    if (more.refuses) throw new CannotWrite("no room");
    written.push(...files);
  };
  const options = { today: "2026-11-25", now: "2026-11-25T09:00:00+01:00", within, calendar: more.calendar };
  const { rows, problems, withinDays } = await listDue(
    { filing, plain: { read: async () => undefined, writeTogether } },
    more.path ?? folder,
    options,
  );
  return { rows, written, withinDays, told: problems.all.map(sentence) };
}

test("loops and standards come by their day, overdue first; later ones are not there", async () => {
  const { rows, told } = await due("30d");
  expect(told).toEqual([]);
  expect(rows).toEqual([
    ["due on", "days left", "what", "last proof"],
    ["2026-11-20", "-5 overdue", "LT-2", "last record C-LT-2"],
    ["2026-12-20", "25", "LT-1", "last record C-LT-1"],
  ]);
  const longer = await due("60w");
  expect(longer.rows.slice(1).map((row) => row[2])).toEqual(["LT-2", "LT-1", "standard GB-1", "LT-3"]);
  for (const [within, days] of [
    ["420d", 420],
    ["1m", 30],
    ["3m", 92],
    ["1y", 365],
  ] as const)
    expect((await due(within)).withinDays).toBe(days);
});

test("where nothing is due there are no rows", async () => {
  const later = (await due("0d")).rows.slice(1).map((row) => row[2]);
  expect(later).toEqual(["LT-2"]);
});

test("a calendar holds the same", async () => {
  const { written } = await due("30d", { calendar: "due.ics" });
  expect(written.map(({ path }) => path)).toEqual(["due.ics"]);
  expect(
    String(written[0]?.text)
      .match(/SUMMARY:.*/gu)
      ?.map((line) => line.trim()),
  ).toEqual(["SUMMARY:Calibrate LT-2", "SUMMARY:Calibrate LT-1"]);
});

describe("what cannot be done is told", () => {
  test.each(["30", "d", "1.5w", "-1d", "1h", "200y", "99999d"])("a time of %j", async (within) => {
    const { rows, told } = await due(within);
    expect(rows).toEqual([]);
    expect(told[0]).toMatch(
      /the option --within cannot be read; read ".*"; accepted: --within with days, weeks, months or years/u,
    );
  });

  test("a folder that is none, and a disk that refuses", async () => {
    expect((await due("30d", { path: "/nowhere" })).told[0]).toMatch(/there is no such folder/u);
    expect((await due("30d", { calendar: "due.ics", refuses: true })).told[0]).toMatch(/due\.ics: .*no room/u);
  });
});
