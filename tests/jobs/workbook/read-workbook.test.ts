import { createHash } from "node:crypto";
import { writeOds } from "hucre/ods";
import { expect, test } from "vitest";
import { standardInput } from "../../../src/jobs/disk.ts";
import type { FirstLook } from "../../../src/jobs/workbook/first-look.ts";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { smallestWorkbook, type Texts, withFile, withText } from "../../workbook/smallest-workbook.ts";
import { spreadsheetOfRows } from "../../workbook/spreadsheet.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

const look = Object.freeze({ range: "0:100mm", signal: "4:20mA", tolerance: "0.5%span" });

async function read(texts: Texts, path: string, firstLook: FirstLook = {}) {
  const reading = await readWorkbook(memoryDisk(texts), path, { today: "2026-11-25", firstLook });
  const cases = reading.cases.map((one) => one.read());
  return { ...reading, cases, told: reading.problems.all.map(sentence) };
}

function sha256(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

test("a folder of tables is read, counted, and each file has its digest", async () => {
  const { cases, counts, told, digests, isUnfilled } = await read(inFolder("book", smallestWorkbook), "book");
  expect(told).toEqual([]);
  expect(cases).toHaveLength(1);
  expect(counts).toEqual({ instruments: 1, calibrations: 1, readings: 5 });
  expect(isUnfilled).toBe(false);
  expect(digests.get("readings.csv")?.sha256).toBe(sha256(smallestWorkbook["readings.csv"]));
});

test("a spreadsheet with the same tables as sheets is read to the same rows", async () => {
  const sheets = Object.entries(smallestWorkbook).map(([name, text]) => [
    name.replace(".csv", ""),
    text
      .trimEnd()
      .split("\n")
      .map((line) => line.split(",")),
  ]);
  const bytes = await spreadsheetOfRows(Object.fromEntries(sheets));
  const { cases, told } = await read({ "book.xlsx": bytes }, "book.xlsx");
  const { cases: fromFolder } = await read(inFolder("book", smallestWorkbook), "book");
  expect(told).toEqual([]);
  expect(cases[0]?.readings.map(({ row }) => row)).toEqual(fromFolder[0]?.readings.map(({ row }) => row));
});

test("a lone table of readings is read with what the options say", async () => {
  const { cases, told } = await read({ "rail.csv": smallestWorkbook["readings.csv"] }, "rail.csv", look);
  expect(told).toEqual([]);
  expect(cases[0]?.instrument.row).toMatchObject({ tag: "rail", rangeUpper: 100, tolerance: 0.5 });
  expect(cases[0]?.calibration.row).toEqual({ calibration: "C-1", tag: "rail" });
});

test("a lone table without its options blames each of them once, and no column that would come from it", async () => {
  const { told } = await read({ "rail.csv": smallestWorkbook["readings.csv"] }, "rail.csv", { range: "0:100mm" });
  expect(told).toEqual([
    expect.stringMatching(/^command line: a lone table of readings needs --signal and --tolerance;/u),
  ]);
});

const rows = [["distance", "mA"], ...[0, 25, 50, 75, 100].map((distance) => [distance, 4.01 + distance / 6.25])];

test("a spreadsheet that cannot be read is told once, on the standard input too", async () => {
  const broken = new Uint8Array([0x50, 0x4b, 1, 2, 3]);
  const cannotBeRead = "the file cannot be read as a spreadsheet";
  expect((await read({ "book.xlsx": broken }, "book.xlsx")).told).toEqual([
    expect.stringContaining(`book.xlsx: ${cannotBeRead}`),
  ]);
  expect((await read({ [standardInput]: broken }, standardInput)).told).toEqual([
    expect.stringContaining(cannotBeRead),
  ]);
});

test.each(["xlsx", "ods"] as const)("a lone %s file is a lone table of readings too", async (kind) => {
  const sheets = [{ name: "Sheet 1", rows }];
  const bytes = kind === "ods" ? await writeOds({ sheets }) : await spreadsheetOfRows({ "Sheet 1": rows });
  const { cases, told } = await read({ [`rail.${kind}`]: bytes }, `rail.${kind}`, look);
  expect(cases[0]?.readings.map(({ row }) => row.reference)).toEqual([0, 25, 50, 75, 100]);
  expect(cases[0]?.calibration.row).toMatchObject({ calibration: "rail", tag: "rail" });
  expect(told.map((one) => one.replace(/;.*/u, ""))).toEqual([
    expect.stringContaining("columns were read by what people call them: distance as reference, mA as signal"),
    expect.stringContaining("no column tells the phase"),
    expect.stringContaining("no column tells the direction"),
  ]);
});

test("an .ods file with sheets of tables is a workbook", async () => {
  const sheets = Object.entries(smallestWorkbook).map(([name, text]) => ({
    name: name.replace(".csv", ""),
    rows: text
      .trimEnd()
      .split("\n")
      .map((line) => line.split(",")),
  }));
  const { cases, told } = await read({ "book.ods": await writeOds({ sheets }) }, "book.ods");
  expect(told).toEqual([]);
  expect(cases[0]?.files[0]?.encoding).toBe("ods");
});

test("what comes on the standard input is a lone table, of text or of a spreadsheet", async () => {
  const text = smallestWorkbook["readings.csv"].replace(/C-1,/gu, "").replace("calibration,", "");
  for (const content of [text, await spreadsheetOfRows({ "Sheet 1": rows })]) {
    const { cases } = await read({ [standardInput]: content }, standardInput, look);
    expect(cases[0]?.calibration.row).toMatchObject({ calibration: "readings", tag: "readings" });
  }
});

test("options that stand for an instrument's row are refused where the workbook has one", async () => {
  const { cases, told } = await read(inFolder("book", smallestWorkbook), "book", { range: "0:50mm", tolerance: "5mm" });
  expect(cases).toEqual([]);
  expect(told).toEqual([
    'command line: the option --range would change nothing: the table instruments of the workbook says it; read "0:50mm"; accepted: the option with a lone table of readings only',
    'command line: the option --tolerance would change nothing: the table instruments of the workbook says it; read "5mm"; accepted: the option with a lone table of readings only',
  ]);
});

test("a lone table with tabs, .txt or .tsv, is a lone table of readings too", async () => {
  const tabbed = smallestWorkbook["readings.csv"].replaceAll(",", "\t");
  for (const name of ["rail.txt", "rail.TSV"]) {
    const { cases, told } = await read({ [name]: tabbed }, name, look);
    expect(told).toEqual([]);
    expect(cases[0]?.instrument.row.tag).toBe("rail");
    expect(cases[0]?.readings).toHaveLength(5);
  }
});

test("pictures and certificates beside the tables are not read, and have no digest", async () => {
  const { digests, told } = await read(
    inFolder("book", { ...smallestWorkbook, "photo.jpg": "x", "notes.txt": "y" }),
    "book",
  );
  expect(told).toEqual([]);
  expect([...digests.keys()].filter((name) => /photo|notes/u.test(name))).toEqual([]);
});

test("every calibration is named, one that a problem stops too", async () => {
  const texts = withText("calibrations.csv", "2026-03-04", "4.3.26");
  const { named, cases } = await read(inFolder("book", texts), "book");
  expect(cases).toEqual([]);
  expect(named).toEqual([{ calibration: "C-1", tag: "LT-1" }]);
});

test("the options of a lone table have a digest too", async () => {
  const { digests } = await read({ "rail.csv": smallestWorkbook["readings.csv"] }, "rail.csv", look);
  expect(digests.get("command line")?.sha256).toBe(sha256("--range 0:100mm\n--signal 4:20mA\n--tolerance 0.5%span"));
});

test("a path at which nothing is, is told", async () => {
  const { told, cases } = await read({}, "nowhere");
  expect(cases).toEqual([]);
  expect(told).toEqual([
    "nowhere: there is no such file or folder; accepted: the folder of a workbook, or a lone table of readings",
  ]);
});

test("a table without a row in a workbook that is filled in elsewhere is no new workbook", async () => {
  const header = "calibration,phase,direction,reference,signal\n";
  const { isUnfilled, told } = await read(inFolder("book", withFile("readings.csv", header)), "book");
  expect(isUnfilled).toBe(false);
  expect(told[0]).toContain("the table has no rows");
});

test("files without a byte are no new workbook", async () => {
  const empty = { "book/instruments.csv": "", "book/calibrations.csv": "", "book/readings.csv": "" };
  expect((await read(empty, "book")).isUnfilled).toBe(false);
});

test("of a lone table without a byte it is said that it is empty, and no more", async () => {
  const look = { range: "0:100mm", signal: "4:20mA", tolerance: "0.5%span" };
  expect((await read({ "rail.csv": "" }, "rail.csv", look)).told).toEqual([
    "rail.csv: the table has no rows; accepted: a first row that names the columns and at least one row below it",
  ]);
});

test("a wrong header makes a workbook without rows wrong", async () => {
  const headers = { ...smallestWorkbook, "instruments.csv": "tag,range_lower\n" };
  const unfilled = Object.entries(headers).map(([name, text]) => [`book/${name}`, `${text.split("\n")[0]}\n`]);
  expect((await read(Object.fromEntries(unfilled), "book")).isUnfilled).toBe(false);
});

test("every problem of every table is told in one run", async () => {
  const texts = {
    ...withText("readings.csv", "rising,25,8.01", "sideways,25,eight"),
    "calibrations.csv": smallestWorkbook["calibrations.csv"].replace("2026-03-04", "4.3.26"),
  };
  const { told, cases } = await read(inFolder("book", texts), "book");
  expect(cases).toEqual([]);
  expect(told.map((text) => text.split(": ")[0])).toEqual(
    expect.arrayContaining(["calibrations.csv:2:performed_on", "readings.csv:3:direction", "readings.csv:3:signal"]),
  );
});
