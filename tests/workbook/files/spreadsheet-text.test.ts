import { expect, test } from "vitest";
import {
  dateText,
  elapsedText,
  isScaledFormat,
  momentText,
  numberText,
} from "../../../src/workbook/files/spreadsheet-text.ts";

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
  [50, "0.0\\ \\i\\n", "50.0 in"],
  [50, '0.0_-"mm"', "50.0 mm"],
  [12.5, "[$€-407] 0.00", "12.50"],
  [12.5, '"€ "0.00', "12.50 €"],
  [-1.5, '0.0" mm";(0.00" in")', "-1.50 in"],
  [12.5, "_-* #,##0.00_-", "12.50"],
  [12, "0.00E+00", "12.00"],
  [0.0000001, "General", "0.0000001"],
  [1e21, "General", "1e+21"],
])("%d shown as %s is %s: zeros are added, digits are never taken away", (value, format, text) => {
  expect(numberText(value, format)).toBe(text);
});

test("a date, a date with a time and a time of day are written as ISO 8601 writes them", () => {
  expect(dateText(new Date(Date.UTC(2026, 2, 4)))).toBe("2026-03-04");
  expect(dateText(new Date(Date.UTC(2026, 2, 4, 14, 5)))).toBe("2026-03-04T14:05:00");
  expect(dateText(new Date(Date.UTC(1899, 11, 31, 14, 5)))).toBe("14:05:00");
  expect(dateText(new Date(Date.UTC(1904, 0, 1, 14, 5)), 1904)).toBe("14:05:00");
  expect(dateText(new Date(Date.UTC(2026, 2, 4, 14, 4, 59, 999)))).toBe("2026-03-04T14:05:00");
});

test("more than a day is hours, which no column takes for a time of day", () => {
  expect(dateText(new Date(Date.UTC(1900, 0, 1, 2, 30)))).toBe("26:30:00");
  expect(elapsedText(26.5 * 3600)).toBe("26:30:00");
});

test("a moment is written to the second, and before 1905 as a time of day alone", () => {
  expect(momentText("2026-03-04")).toBe("2026-03-04");
  expect(momentText("2026-03-04T00:00:00")).toBe("2026-03-04");
  expect(momentText("2026-03-04T14:04:59.9996")).toBe("2026-03-04T14:05:00");
  expect(momentText("1899-12-30T14:05:00")).toBe("14:05:00");
  expect(momentText("2026-02-31T14:05:00x")).toBe("2026-02-31T14:05:00x");
});

test.each([
  ["0.0,", true],
  ['0,," million"', true],
  ["#,##0.00", false],
  ["0.0,;0.0", true],
  ['0" a, b"', false],
  ["General", false],
])("%s shows thousandths: %s", (format, isScaled) => {
  expect(isScaledFormat(format)).toBe(isScaled);
});
