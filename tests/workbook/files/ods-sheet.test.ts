import { expect, test } from "vitest";
import { OdsSheet, TooWideSheet } from "../../../src/workbook/files/ods-sheet.ts";

const attributes = (given: Readonly<Record<string, string>>) => (name: string) => given[name] ?? "";

function cell(sheet: OdsSheet, given: Readonly<Record<string, string>>, text = ""): void {
  sheet.open("table:table-cell", attributes(given));
  if (text !== "") {
    sheet.open("text:p", attributes({}));
    sheet.text(text);
    sheet.close("text:p");
  }
  sheet.close("table:table-cell");
}

test("a sheet is built from what is told of it, and a text outside its paragraphs is none", () => {
  const sheet = new OdsSheet("readings", false);
  sheet.open("table:table-row", attributes({}));
  cell(sheet, { "table:number-columns-repeated": "3" });
  sheet.text("between");
  cell(sheet, { "office:value-type": "float", "office:value": "4.01" }, "4.010");
  cell(sheet, { "table:formula": "of:=[.D1]" });
  sheet.close("table:table-row");
  expect(sheet.done()).toMatchObject({
    rows: [{ line: 1, cells: ["", "", "", "4.010"] }],
    doubtful: [{ line: 1, index: 4, why: "uncalculated", formula: "[.D1]" }],
  });
});

test("a cell that repeats over more than may be read is where the sheet would reach to", () => {
  const sheet = new OdsSheet("readings", false);
  sheet.open("table:table-row", attributes({}));
  const wide = { "office:value-type": "string", "table:number-columns-repeated": "2000000000" };
  expect(() => cell(sheet, wide, "x")).toThrow(new TooWideSheet("readings", "XFD1"));
});
