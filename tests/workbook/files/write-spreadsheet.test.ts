import { readXlsx } from "hucre/xlsx";
import { expect, test } from "vitest";
import { tableColumns } from "../../../src/model/table-columns.ts";
import { type WrittenTable, writeSpreadsheet } from "../../../src/workbook/files/write-spreadsheet.ts";

const columnsOf = (...names: readonly string[]) => tableColumns("readings").filter(({ name }) => names.includes(name));
const tables: readonly WrittenTable[] = [
  { name: "readings", columns: columnsOf("phase", "reference", "remark"), rows: [["as_found", 0.1, "=A1"]] },
  { name: "trips", columns: tableColumns("trips"), rows: [] },
];

test("each table is a sheet, numbers are numbers, and the same tables are the same bytes", async () => {
  const bytes = await writeSpreadsheet(tables);
  const { sheets } = await readXlsx(bytes);
  expect(sheets.map(({ name }) => name)).toEqual(["readings", "trips"]);
  expect(sheets[0]?.rows).toEqual([
    ["phase", "reference", "remark"],
    ["as_found", 0.1, "=A1"],
  ]);
  expect(await writeSpreadsheet(tables)).toEqual(bytes);
});

test("the header stays in sight, each name has a note, those that are needed are bold", async () => {
  const [sheet] = (await readXlsx(await writeSpreadsheet(tables), { readStyles: true })).sheets;
  expect(sheet?.freezePane).toEqual({ rows: 1 });
  const header = [0, 1, 2].map((column) => sheet?.cells?.get(`0,${column}`));
  expect(header.map((cell) => cell?.comment?.text)).toEqual([
    "Needed. Before or after anything was adjusted.\nOne of as_found, as_left.",
    expect.stringContaining("A number in the unit that distance_unit says, or with its own: mm, cm, m, in, ft."),
    expect.stringContaining("Words."),
  ]);
  expect(header.map((cell) => cell?.style?.font?.bold === true)).toEqual([true, true, false]);
});

test("fixed words are chosen from a list, below the header", async () => {
  const { sheets } = await readXlsx(await writeSpreadsheet(tables));
  expect(sheets[0]?.dataValidations).toMatchObject([
    { type: "list", values: ["as_found", "as_left"], range: "A2:A5001", showErrorMessage: true },
  ]);
});
