import { expect, test } from "vitest";
import { dateText, numberText } from "../../../src/workbook/files/spreadsheet-text.ts";

test.each([
  [10.02, "0.000", "10.020"],
  [10.02, "General", "10.02"],
  [10.02, undefined, "10.02"],
  [10.0234, "0.0", "10.0234"],
  [4, "0.00", "4.00"],
  [0.1 + 0.2, "General", "0.3"],
  [0.005, "0.0%", "0.5 %"],
  [0.005, "0%", "0.5 %"],
  [12.5, '0.00" mA"', "12.50 mA"],
  [12.5, '0.0\\ "mm"', "12.5 mm"],
  [1234.5, "#,##0.00", "1234.50"],
  [-1.5, "0.00;[Red]-0.00", "-1.50"],
  [123, "00000", "00123"],
  [0.0000001, "General", "0.0000001"],
  [1e21, "General", "1e+21"],
])("%d shown as %s is %s: zeros are added, digits are never taken away", (value, format, text) => {
  expect(numberText(value, format)).toBe(text);
});

test("a date, a date with a time and a time of day are written as ISO 8601 writes them", () => {
  expect(dateText(new Date(Date.UTC(2026, 2, 4)))).toBe("2026-03-04");
  expect(dateText(new Date(Date.UTC(2026, 2, 4, 14, 5)))).toBe("2026-03-04T14:05:00");
  expect(dateText(new Date(Date.UTC(1899, 11, 30, 14, 5)))).toBe("14:05:00");
});
