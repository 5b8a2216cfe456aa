import { expect, test } from "vitest";
import { isDate, isTime, readDate } from "../../../src/workbook/cells/read-date.ts";

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

test.each([
  ["2026-3-4", "2026-03-04"],
  ["2026/03/04", "2026-03-04"],
  ["20260304", "2026-03-04"],
  ["25/12/2026", "2026-12-25"],
  ["12/25/2026", "2026-12-25"],
  ["04.04.2026", "2026-04-04"],
  ["4 March 2026", "2026-03-04"],
  ["4-Mar-2026", "2026-03-04"],
  ["March 4th, 2026", "2026-03-04"],
])("%s is told as the day that it means", (text, day) => {
  expect(readDate(text)).toEqual({ code: "tables/cell-date-form", values: { day } });
});

test.each([
  ["2026-02-30", "February 2026 has 28 days"],
  ["2024-2-30", "February 2024 has 29 days"],
  ["30 February", "February has 29 days"],
  ["30 Feb 2026", "February 2026 has 28 days"],
  ["31/04/2026", "April 2026 has 30 days"],
  ["2026-13-01", "there is no month 13"],
  ["2026-00-10", "there is no month 0"],
  ["2026-04-00", "April 2026 has no day 0"],
])("%s is told as no day", (text, why) => {
  expect(readDate(text)).toEqual({ code: "tables/cell-no-day", values: { why } });
});

test.each(["03/04/2026", "04/03/26", "4 March", "soon", "46085"])("%s cannot be read in one way only", (text) => {
  expect(readDate(text)).toEqual({ code: "tables/cell-not-date", values: {} });
});

test("a day as ISO 8601 writes it is the value", () => {
  expect(readDate("2026-03-04")).toEqual({ value: "2026-03-04" });
});
