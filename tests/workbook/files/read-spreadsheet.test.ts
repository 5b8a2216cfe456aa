import { expect, test } from "vitest";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { readSpreadsheet } from "../../../src/workbook/files/read-spreadsheet.ts";
import { checked, smallestWorkbook, withFile } from "../smallest-workbook.ts";
import { spreadsheet, spreadsheetOfRows } from "../spreadsheet.ts";

async function read(bytes: Uint8Array) {
  const problems = new ProblemList();
  const sheets = await readSpreadsheet({ name: "book.xlsx", bytes }, problems);
  return { tables: sheets.flatMap((sheet) => ("table" in sheet ? [sheet.table] : [])), sheets, problems: problems.all };
}

test("a workbook in one spreadsheet is the same workbook as in files", async () => {
  const sheets = Object.fromEntries(
    Object.entries(smallestWorkbook).map(([name, text]) => [
      name.replace(".csv", "").toUpperCase(),
      text
        .trimEnd()
        .split("\n")
        .map((line) => line.split(",").map((cell) => (/^\d+(\.\d+)?$/u.test(cell) ? Number(cell) : cell))),
    ]),
  );
  const fromFiles = await checked(smallestWorkbook);
  const fromSheets = await checked({ "book.xlsx": await spreadsheetOfRows(sheets) });
  expect(fromSheets.sentences).toEqual([]);
  expect(fromSheets.workbook.readings.map(({ row }) => row)).toEqual(fromFiles.workbook.readings.map(({ row }) => row));
  expect(fromSheets.workbook.readings[0]).toMatchObject({ file: "book.xlsx", line: 2 });
  expect(fromSheets.cases[0]?.files).toEqual([
    {
      name: "book.xlsx",
      encoding: "xlsx",
      delimiter: null,
      decimalMark: "point",
      tables: ["instruments", "standards", "calibrations", "readings"],
      sheets: fromSheets.cases[0]?.files[0]?.sheets,
    },
  ]);
});

test("whatever is wrong in a sheet is told with its cell: in a row, between rows, in what the numbers say", async () => {
  const rows = smallestWorkbook["readings.csv"]
    .trimEnd()
    .split("\n")
    .map((line) => ["", ...line.split(",")]);
  const column = rows[0]?.indexOf("signal") ?? 0;
  const changed = (line: number, text: string) =>
    rows.map((row, index) => (index + 1 === line ? row.map((cell, place) => (place === column ? text : cell)) : row));
  const told = async (line: number, text: string) => {
    const book = await spreadsheetOfRows({ Readings: changed(line, text) });
    const { "readings.csv": _, ...others } = smallestWorkbook;
    return (await checked({ ...others, "book.xlsx": book })).sentences.join("\n");
  };
  expect(await told(3, "8.O1")).toContain("book.xlsx, sheet Readings, cell F3 (signal): this is not a number");
  expect(await told(1, "sgnal")).toContain("book.xlsx, sheet Readings, cell F1 (sgnal): ");
  expect(await told(4, "")).toContain("book.xlsx, sheet Readings, row 4: the reading has neither");
  expect(await told(4, "21.9")).toContain("book.xlsx, sheet Readings, cell F4 (signal): ");
});

test("numbers keep the decimals that they show, dates become ISO 8601, lines are row numbers", async () => {
  const rows = [[null], [], ["reference", "signal", "time"], [], [25, 10.02, new Date(Date.UTC(2026, 2, 4, 14, 5))]];
  const bytes = await spreadsheetOfRows({ readings: rows }, { "4,1": { value: 10.02, style: { numFmt: "0.000" } } });
  const [table] = (await read(bytes)).tables;
  expect(table?.headerLine).toBe(3);
  expect(table?.rows).toEqual([{ line: 5, cells: ["25", "10.020", "2026-03-04T14:05:00"] }]);
});

test("a formula gives its cached value, and without one it is a problem at its cell", async () => {
  const bytes = await spreadsheet("readings", "reference,signal\n25,0\n50,0", {
    "1,1": { formula: "4+4.01", formulaResult: 8.01 },
    "2,1": { formula: "4+8.01" },
  });
  const { tables, problems } = await read(bytes);
  expect(tables[0]?.rows.at(0)?.cells).toEqual(["25", "8.01"]);
  expect(problems).toMatchObject([
    {
      code: "tables/formula-uncalculated",
      place: { file: "book.xlsx", sheet: "readings", line: 3, column: "signal", cell: "B3" },
      read: "=4+8.01",
    },
  ]);
});

test("truth values are words, and a sheet of another name is told unless it is empty", async () => {
  const bytes = await spreadsheetOfRows({ instruments: [["loop_powered"], [true]], Notes: [["hello"]], Sheet3: [] });
  const { tables, sheets } = await read(bytes);
  expect(tables[0]?.rows.at(0)?.cells).toEqual(["true"]);
  expect(sheets.slice(1)).toEqual([{ unknownSheet: "Notes" }]);
});

test("a comma in a text among numbers is a mixed decimal mark", async () => {
  const { problems } = await read(await spreadsheetOfRows({ readings: [["signal"], [4.01], ["8,01"]] }));
  expect(problems.map(({ code }) => code)).toEqual(["tables/decimal-mark-mixed"]);
});

test.each([
  ["nothing", new Uint8Array(0)],
  ["a text", new TextEncoder().encode("calibration,phase")],
  ["half a zip", null],
])("%s in the place of a spreadsheet is a problem, not a crash, and is told alone", async (_, bytes) => {
  const half = (await spreadsheet("readings", "signal\n1")).slice(0, 300);
  const { codes } = await checked(withFile("book.xlsx", bytes ?? half));
  expect(codes).toEqual(["tables/spreadsheet"]);
});
