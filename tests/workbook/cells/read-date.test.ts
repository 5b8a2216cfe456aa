import { expect, test } from "vitest";
import { isDate, isTime } from "../../../src/workbook/cells/read-date.ts";

test.each(["2026-03-04", "2024-02-29", "1999-12-31", "2000-02-29"])("%s is a day", (text) => {
  expect(isDate(text)).toBe(true);
});

// 1900 was no leap year, 2000 was one (Gregorian calendar, ISO 8601-1:2019, 3.1.2.21).
test.each([
  "03/04/2026",
  "04.03.2026",
  "2026-3-4",
  "20260304",
  "2026-13-01",
  "2026-00-10",
  "2026-02-30",
  "1900-02-29",
  "2025-02-29",
  "0026-03-04",
  "2026-03-04T00:00",
  "46085",
  "",
])("%j is no day that can be read in one way only", (text) => {
  expect(isDate(text)).toBe(false);
});

test.each([
  "14:05",
  "14:05:30",
  "14:05:30.25",
  "23:59Z",
  "2026-03-04T14:05",
  "2026-03-04 14:05:30",
  "2026-03-04T14:05:30+01:00",
])("%s is a time", (text) => {
  expect(isTime(text)).toBe(true);
});

test.each(["2:05 pm", "24:00", "14:60", "14", "2026-02-30T14:05", "2026-03-04", "2026-03-04T", "T14:05", ""])(
  "%j is no time of day",
  (text) => {
    expect(isTime(text)).toBe(false);
  },
);
