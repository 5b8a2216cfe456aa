import { readXlsx } from "hucre/xlsx";
import { expect, test } from "vitest";
import { Grid } from "../../src/spreadsheet/grid.ts";
import { writeWorkbook } from "../../src/spreadsheet/write-workbook.ts";

const hostile = [
  "=1+1",
  "+1",
  "-1",
  "@SUM(A1)",
  "\t=1",
  '=HYPERLINK("http://example.com")',
  "<b>&amp;",
  "'x",
  "_x0041_",
  "a\u0001b",
  "_x005F_",
];

function sheetOf(...rows: Parameters<Grid["add"]>[0][]): { grid: Grid } {
  const grid = new Grid("Readings");
  for (const cells of rows) grid.add(cells);
  return { grid };
}

async function cellsOf(...rows: Parameters<Grid["add"]>[0][]) {
  const read = await readXlsx(await writeWorkbook([sheetOf(...rows)]), { readStyles: false });
  const sheet = read.sheets[0]!;
  return { rows: sheet.rows, cells: sheet.cells };
}

test("text stays text, whatever it begins with", async () => {
  const { rows, cells } = await cellsOf(hostile);
  expect(rows[0]).toEqual(hostile);
  expect([...(cells?.values() ?? [])].filter(({ formula }) => formula !== undefined)).toEqual([]);
});

test("a formula keeps what the record says that it gives; numbers and empty cells stay what they are", async () => {
  const { rows, cells } = await cellsOf([
    1.5,
    null,
    { formula: "A1*2", is: 3 },
    { formula: 'IF(A1>1,"pass","fail")', is: "pass" },
  ]);
  expect(rows[0]).toEqual([1.5, null, 3, "pass"]);
  expect(cells?.get("0,2")).toMatchObject({ formula: "A1*2" });
});

test("the same sheets are the same bytes", async () => {
  const bytes = () => writeWorkbook([sheetOf(["a", 1, { formula: "B1+1", is: 2 }])]);
  expect(Buffer.compare(Buffer.from(await bytes()), Buffer.from(await bytes()))).toBe(0);
});

test("text that no cell holds is cut and says so", async () => {
  const { rows } = await cellsOf(["y".repeat(40_000)]);
  expect(rows[0]?.[0]).toBe(`${"y".repeat(32_766)}…`);
});
