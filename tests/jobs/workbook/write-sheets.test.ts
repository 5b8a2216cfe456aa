import { expect, test } from "vitest";
import { type SheetOptions, writeSheets } from "../../../src/jobs/workbook/write-sheets.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import type { SheetData } from "../../../src/sheet/sheet-data.ts";
import { smallestWorkbook, type Texts, withColumn, withText } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const options: SheetOptions = { today: "2026-11-27", version: "0.3.0", out: "sheets", onPaper: false };

async function sheets(texts: Texts, more: Partial<SheetOptions> = {}) {
  const disk = memoryDisk(inFolder("book", texts));
  const problems = new ProblemList();
  const paths = await writeSheets(disk, "book", { ...options, ...more }, problems);
  const data = paths.map((path) => dataOf(disk.written.get(path) ?? ""));
  return { disk, paths, data, told: problems.all.map(sentence) };
}

function dataOf(page: string): SheetData | undefined {
  const json = /id="sheet-data">(.*?)<\/script>/su.exec(page)?.[1];
  return json === undefined ? undefined : (JSON.parse(json) as SheetData);
}

const unread = { ...smallestWorkbook, "readings.csv": "calibration,phase,direction,reference,signal\n" };
const readingsOf = (data: SheetData | undefined) => data?.planned.filter(({ table }) => table === "readings") ?? [];

test("a calibration without readings gets a sheet with every reading to be taken, in the order of the work", async () => {
  const { paths, data, told } = await sheets(unread, { tag: "LT-1", points: "3", cycles: "1" });
  expect(told).toEqual([]);
  expect(paths).toEqual(["sheets/LT-1_C-1_sheet.html"]);
  const found = readingsOf(data[0]).filter(({ cells }) => cells.phase === "as_found");
  expect(found.map(({ cells }) => `${cells.direction} ${cells.point}`)).toEqual([
    "rising 0",
    "rising 50",
    "rising 100",
    "falling 100",
    "falling 50",
    "falling 0",
  ]);
  expect(data[0]?.planned[0]).toMatchObject({ isGiven: true, cells: { performed_by: "T. Example" } });
});

test("five points and three runs where nothing is said; as many points as the loop needs", async () => {
  expect(readingsOf((await sheets(unread, { tag: "LT-1" })).data[0])).toHaveLength(2 * 2 * 3 * 5);
  const needing = {
    ...unread,
    ...withColumn("instruments.csv", "points_needed", "11"),
    "readings.csv": unread["readings.csv"],
  };
  expect(readingsOf((await sheets(needing, { tag: "LT-1", cycles: "1" })).data[0])).toHaveLength(2 * 2 * 11);
});

test("readings that are there come along in their places, given", async () => {
  const { data } = await sheets(smallestWorkbook, { calibration: "C-1", cycles: "1" });
  const given = readingsOf(data[0]).filter(({ isGiven }) => isGiven);
  expect(given.map(({ cells }) => cells.signal)).toEqual(["4.01", "8.01", "12.01", "16.01", "20.01"]);
  expect(readingsOf(data[0])).toHaveLength(20);
});

test("a tag whose calibrations all have readings gets a new one, under a name that is free", async () => {
  const { data } = await sheets(smallestWorkbook, { tag: "LT-1" });
  expect(data.map((one) => one?.calibration)).toEqual(["LT-1-2026-11-27"]);
});

test("the number of a sheet is that of its content, whatever day and program made it", async () => {
  const [first] = (await sheets(unread, { tag: "LT-1" })).data;
  const [later] = (await sheets(unread, { tag: "LT-1", today: "2026-12-01", version: "0.4.0" })).data;
  const [other] = (await sheets(unread, { tag: "LT-1", cycles: "2" })).data;
  expect(later?.sheet).toBe(first?.sheet);
  expect(other?.sheet).not.toBe(first?.sheet);
});

test("a form for the pen has no script, prints what is expected, and the cautions first", async () => {
  const { disk, paths } = await sheets(unread, { tag: "LT-1", onPaper: true, cycles: "1" });
  const page = disk.written.get(paths[0] ?? "") ?? "";
  expect(paths).toEqual(["sheets/LT-1_C-1_form.html"]);
  expect(page).not.toContain("<script");
  expect(page.indexOf("lockout procedure")).toBeLessThan(page.indexOf("As found"));
  // Heads of tables repeat on each printed side: whose form it is stands in every one.
  expect(page.match(/LT-1, calibration C-1, sheet S-/gu)?.length).toBe(page.match(/<thead>/gu)?.length);
  expect(page).toMatch(/<td class="printed">25<\/td><td class="box"><\/td><td class="printed">8<\/td>/u);
});

test("a policy names both programs and nothing else, and a sheet weighs less than 450 kB", async () => {
  const { disk, paths } = await sheets(unread, { tag: "LT-1" });
  const page = disk.written.get(paths[0] ?? "") ?? "";
  expect(page).toMatch(
    /content="default-src 'none'; script-src 'sha256-[\w+/=]+' 'sha256-[\w+/=]+'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"/u,
  );
  expect(page.length).toBeLessThan(450_000);
});

test("hostile texts of the tables stay text", async () => {
  const hostile = withText("instruments.csv", "LT-1,", "</script><img src=x>,");
  const calibrations = hostile["calibrations.csv"]?.toString().replace("LT-1", "</script><img src=x>") ?? "";
  const { disk, paths } = await sheets({ ...hostile, "calibrations.csv": calibrations });
  const page = disk.written.get(paths[0] ?? "") ?? "";
  expect(paths[0]).toMatch(/^sheets\/[\w.-]+_sheet\.html$/u);
  expect(page).not.toContain("<img");
  expect(dataOf(page)?.tag).toBe("</script><img src=x>");
});

test("what comes with a sheet has to be right, and every problem of it is told", async () => {
  const { paths, told } = await sheets(withText("instruments.csv", "0,100,mm", "zero,100,mm"));
  expect(paths).toEqual([]);
  expect(told.join("\n")).toContain("instruments.csv:2:range_lower");
  expect((await sheets(unread, { tag: "LT-9" })).told[0]).toContain("no instrument of the workbook has this tag");
  expect((await sheets(unread, { calibration: "C-9" })).told[0]).toContain(
    "no calibration of the workbook is called so",
  );
  expect((await sheets(unread, { points: "1" })).told[0]).toContain("--points");
});
