import { readXlsx } from "hucre/xlsx";
import { expect, test } from "vitest";
import { writeSpreadsheet } from "../../../src/workbook/files/write-spreadsheet.ts";

test("each table is a sheet, numbers are numbers, and the same tables are the same bytes", async () => {
  const sheets = {
    readings: [
      ["reference", "remark"],
      [0.1, "=A1"],
    ],
    trips: [["reference"]],
  };
  const bytes = await writeSpreadsheet(sheets);
  const read = await readXlsx(bytes);
  expect(read.sheets.map(({ name, rows }) => [name, rows])).toEqual([
    [
      "readings",
      [
        ["reference", "remark"],
        [0.1, "=A1"],
      ],
    ],
    ["trips", [["reference"]]],
  ]);
  expect(await writeSpreadsheet(sheets)).toEqual(bytes);
});
