import { zipSync } from "fflate";
import { expect, test } from "vitest";
import { collectTables } from "../../../src/jobs/collect/collect-tables.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { checked, smallestWorkbook, type Texts } from "../../workbook/smallest-workbook.ts";
import { inFolder, memoryDisk } from "../memory-disk.ts";

async function collected(texts: Texts, sources: readonly string[], refuses?: (path: string) => boolean) {
  const disk = memoryDisk(texts, refuses);
  const problems = new ProblemList();
  const taken = await collectTables(disk, sources, "book", problems);
  return { disk, taken, told: problems.all.map(sentence), written: Object.fromEntries(disk.written) };
}

const bytes = (text: string) => new TextEncoder().encode(text);
const zipped = (texts: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, bytes(text)])));

const unread = { ...smallestWorkbook, "readings.csv": "calibration,phase,direction,reference,signal\n" };
const one = "calibration,phase,cycle,direction,reference,signal\nC-1,as_found,1,rising,0,4.01\n";

test("a package of a sheet makes a workbook where there is none", async () => {
  const { taken, told, written } = await collected({ "back.zip": zipped(smallestWorkbook) }, ["back.zip"]);
  expect(told).toEqual([]);
  expect(taken).toEqual([{ path: "back.zip", added: 6, filled: 0, same: 0 }]);
  const texts = Object.fromEntries(Object.entries(written).map(([path, text]) => [path.slice(5), text]));
  expect((await checked(texts)).sentences).toEqual([]);
});

test("taken in twice it is there once, and the second time nothing is written", async () => {
  const texts = { ...inFolder("book", unread), "a.zip": zipped({ "readings.csv": one }) };
  const first = await collected(texts, ["a.zip"]);
  expect(first.taken).toEqual([{ path: "a.zip", added: 1, filled: 0, same: 0 }]);
  const second = await collected({ ...texts, ...first.written }, ["a.zip", "a.zip"]);
  expect(second.taken.map(({ added, same }) => [added, same])).toEqual([
    [0, 1],
    [0, 1],
  ]);
  expect(second.written).toEqual({});
});

test("a source that contradicts a reading is left out as a whole, named with both places; others are taken", async () => {
  const other = one.replace("4.01", "4.02").concat("C-1,as_found,1,rising,25,8.01\n");
  const { taken, told, written } = await collected(
    {
      ...inFolder("book", { ...unread, "readings.csv": one }),
      "a.zip": zipped({ "readings.csv": other }),
      "b/readings.csv": one.replace(",0,4.01", ",50,12.01"),
    },
    ["a.zip", "b"],
  );
  expect(told).toEqual([
    'a.zip/readings.csv:2:signal: the workbook says 4.01 at book/readings.csv:2, and nothing of this source was taken in; read "4.02"; accepted: the same text, or an empty cell in the workbook: no reading is written over',
  ]);
  expect(taken).toEqual([{ path: "b", added: 1, filled: 0, same: 0 }]);
  expect(written["book/readings.csv"]).toContain("50,12.01");
  expect(written["book/readings.csv"]).not.toContain("4.02");
});

test("the row of an instrument that differs is told and the workbook's is kept", async () => {
  const instruments = smallestWorkbook["instruments.csv"].replace("0.5", "0.25");
  const { told, taken, written } = await collected(
    { ...inFolder("book", unread), "a.zip": zipped({ "instruments.csv": instruments, "readings.csv": one }) },
    ["a.zip"],
  );
  expect(told).toEqual([
    'a.zip/instruments.csv:2:tolerance: the workbook says 0.5 at book/instruments.csv:2, which is kept; read "0.25"; accepted: the row of the workbook',
  ]);
  expect(taken).toHaveLength(1);
  expect(written["book/instruments.csv"]).toBeUndefined();
});

test("a table keeps its decimal comma and its semicolons, and its units of the header", async () => {
  const comma = "calibration;phase;cycle;direction;reference (cm);signal\nC-1;as_found;1;rising;2,5;8,01\n";
  const { written } = await collected(
    { ...inFolder("book", { ...unread, "readings.csv": comma }), "a.zip": zipped({ "readings.csv": one }) },
    ["a.zip"],
  );
  expect(written["book/readings.csv"]?.split("\r\n")).toEqual([
    "calibration;phase;cycle;direction;reference;signal",
    "C-1;as_found;1;rising;2,5 cm;8,01",
    "C-1;as_found;1;rising;0;4,01",
    "",
  ]);
});

test("what cannot be taken in is told: nothing there, no tables, no package, a spreadsheet as the workbook", async () => {
  const { told } = await collected({ "a.zip": bytes("no zip"), "b/notes.md": "hello", "book/book.xlsx": "PK" }, [
    "nothing",
    "a.zip",
    "b",
  ]);
  expect(told.map((line) => line.replace(/; accepted.*/u, ""))).toEqual([
    "nothing: there is no such file or folder",
    "a.zip: it cannot be unpacked: invalid zip data",
    expect.stringContaining("b: there is no table in it"),
    "book: tables are taken into a folder of .csv files only",
    "book/book.xlsx: the file cannot be read as a spreadsheet",
  ]);
});

test("what the disk refuses is told, and nothing is said to be taken", async () => {
  const { taken, told } = await collected(
    { ...inFolder("book", unread), "a.zip": zipped({ "readings.csv": one }) },
    ["a.zip"],
    () => true,
  );
  expect(taken).toEqual([]);
  expect(told).toHaveLength(1);
});
