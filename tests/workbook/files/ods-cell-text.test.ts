import { expect, test } from "vitest";
import { odsCellText } from "../../../src/workbook/files/ods-cell-text.ts";

const cell = (type: string, value: string, shown: string, formula = "") =>
  odsCellText({ type, value, shown, formula, repeated: 1, rows: 1, columns: 1 });

// Values and texts as OASIS OpenDocument 1.3 part 3, 19.367 to 19.389, has them in a cell.
test.each([
  ["float", "10.02", "10.020", "10.020"],
  ["float", "10.02", "10,020", "10.020"],
  ["float", "10.0234", "10.0", "10.0234"],
  ["float", "1234.5", "1,234.50", "1234.50"],
  ["float", "1234", "1,234", "1234"],
  ["float", "1.234", "1,234", "1.234"],
  ["float", "1234.5", "1 234,50", "1234.50"],
  ["float", "-1.5", "(1.50)", "-1.50"],
  ["float", "12.5", "12.50 mA", "12.50 mA"],
  ["float", "12", "1.20E+01", "12"],
  ["float", "0.5", ".5", "0.5"],
  ["float", "1.005", "1.01", "1.005"],
  ["currency", "12.5", "12.50 €", "12.50 €"],
  ["percentage", "0.05", "5 %", "5 %"],
  ["percentage", "0.005", "0,5%", "0.5 %"],
  ["percentage", "0.0525", "5%", "5.25 %"],
  ["date", "2026-03-04", "04/03/26", "2026-03-04"],
  ["date", "2026-03-04T14:05:00", "4 March", "2026-03-04T14:05:00"],
  ["time", "PT14H05M00S", "2:05 PM", "14:05:00"],
  ["time", "PT26H30M00.000S", "26:30", "26:30:00"],
  ["boolean", "true", "TRUE", "true"],
  ["string", "", "12,02", "12,02"],
  ["string", "kept", "", "kept"],
  ["", "", "", ""],
])("a %s of %s that shows %s is %s", (type, value, shown, text) => {
  expect(cell(type, value, shown)).toEqual({ text });
});

test("a number that shows another one is a doubt, a formula without result too", () => {
  expect(cell("float", "12000", "12")).toMatchObject({
    doubt: { why: "shown otherwise", shown: "12", holds: "12000" },
  });
  expect(cell("float", "0.5", "1/2")).toMatchObject({ doubt: { why: "shown otherwise" } });
  expect(cell("", "", "", "[.A1]+1")).toEqual({ text: "", doubt: { why: "uncalculated", formula: "[.A1]+1" } });
});
