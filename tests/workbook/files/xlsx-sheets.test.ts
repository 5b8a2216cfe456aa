import { expect, test } from "vitest";
import { xlsxSheets } from "../../../src/workbook/files/xlsx-sheets.ts";
import { spreadsheetOfRows } from "../spreadsheet.ts";

const moment = new Date(Date.UTC(2026, 2, 4, 14, 5));

test.each(["1900", "1904"] as const)(
  "a day, a moment and a time are the same in the date system of %s",
  async (system) => {
    const time = { value: 14.0833333333333 / 24, style: { numFmt: "hh:mm" } };
    const rows = [
      ["day", "moment", "time"],
      [new Date(Date.UTC(2026, 2, 4)), moment, 0],
    ];
    const [sheet] = await xlsxSheets(await spreadsheetOfRows({ x: rows }, { "1,2": time }, {}, system));
    expect(sheet?.rows[1]?.cells).toEqual(["2026-03-04", "2026-03-04T14:05:00", "14:05:00"]);
  },
);

test("per cent is what the cell shows, text numbers stay texts, truth values are words", async () => {
  const rows = [
    ["a", "b", "c"],
    [0.05, "12,02", true],
  ];
  const [sheet] = await xlsxSheets(
    await spreadsheetOfRows({ x: rows }, { "1,0": { value: 0.05, style: { numFmt: "0%" } } }),
  );
  expect(sheet?.rows[1]?.cells).toEqual(["5 %", "12,02", "true"]);
});

test("hidden sheets, rows and columns, merged cells, formulas without result and scaled numbers are known", async () => {
  const bytes = await spreadsheetOfRows(
    {
      x: [
        ["a", "b"],
        [1, 2],
        [3, 4],
      ],
    },
    { "1,1": { formula: "A2+1" }, "2,0": { value: 3, style: { numFmt: "0.0," } } },
    {
      hidden: true,
      rowDefs: new Map([[2, { hidden: true }]]),
      columns: [{}, { hidden: true }],
      merges: [{ startRow: 1, startCol: 0, endRow: 2, endCol: 0 }],
    },
  );
  const [sheet] = await xlsxSheets(bytes);
  expect(sheet?.isHidden).toBe(true);
  expect([...(sheet?.hiddenLines ?? []), ...(sheet?.hiddenColumns ?? [])]).toEqual([3, 1]);
  expect(sheet?.merged).toEqual([{ first: { line: 2, index: 0 }, last: { line: 3, index: 0 } }]);
  expect(sheet?.doubtful).toMatchObject([
    { line: 2, index: 1, why: "uncalculated", formula: "A2+1" },
    { line: 3, index: 0, why: "shown otherwise", holds: "3" },
  ]);
});
