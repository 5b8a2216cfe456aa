import { expect, test } from "vitest";
import { noEntries } from "../../../src/sheet/state/entries.ts";
import { csvText, entryTables } from "../../../src/sheet/state/entry-tables.ts";
import { checked, smallestWorkbook, withColumn } from "../../workbook/smallest-workbook.ts";
import { at, sheetOf, typed, wholeRun } from "../sample-sheet.ts";

const where = { typedIn: "S-1-00ff" };

test("nothing typed: what came with the sheet, the calibration, and readings without a row", async () => {
  const tables = entryTables(await sheetOf(), noEntries, where);
  expect(tables.map(({ table, rows }) => [table, rows.length])).toEqual([
    ["instruments", 1],
    ["standards", 1],
    ["calibrations", 1],
    ["readings", 0],
  ]);
});

test("only rows that were filled in, a comma as a point, the reference that of the point, when and where", async () => {
  const data = await sheetOf();
  const [readings] = entryTables(data, typed(data, [["as_found/1/rising/25", "signal", "8,01"]]), where).slice(-1);
  expect(readings && csvText(readings, data.mark).split("\r\n")).toEqual([
    "calibration,phase,cycle,direction,point,reference,signal,typed_at,typed_in",
    `C-1,as_found,1,rising,25,25,8.01,${at},S-1-00ff`,
    "",
  ]);
});

test("what was typed again is kept with the moment until which it stood", async () => {
  const data = await sheetOf();
  const entries = typed(data, [
    ["as_found/1/rising/25", "signal", "8.10"],
    ["as_found/1/rising/25", "signal", "8.01"],
  ]);
  const [readings] = entryTables(data, entries, where).slice(-1);
  expect(readings?.rows[0]?.at(-1)).toBe(`signal 8.10 until ${at}`);
});

test("the tables are a workbook in which nothing is wrong, with a decimal comma too", async () => {
  const asking = withColumn("instruments.csv", "decimal_mark", "comma");
  for (const texts of [smallestWorkbook, asking]) {
    const data = await sheetOf({ ...texts, "readings.csv": "calibration,phase,direction,reference,signal\n" });
    const tables = entryTables(data, wholeRun(data), where);
    const files = Object.fromEntries(tables.map((table) => [`${table.table}.csv`, csvText(table, data.mark)]));
    const { sentences, cases } = await checked(files);
    expect(sentences).toEqual([]);
    expect(cases[0]?.readings.map(({ row }) => row.signal)).toEqual([
      4.01, 8.01, 12.01, 16.01, 20.01, 20.01, 16.01, 12.01, 8.01, 4.01,
    ]);
  }
});

test("a formula that somebody typed as a remark is text in the file", async () => {
  const data = await sheetOf();
  const entries = typed(data, [["check/fuse", "remark", '=HYPERLINK("http://x")']]);
  const checks = entryTables(data, entries, where).find(({ table }) => table === "loop_checks");
  expect(checks && csvText(checks, data.mark)).toContain("'=HYPERLINK");
});
