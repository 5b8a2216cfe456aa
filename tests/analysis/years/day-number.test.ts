import { expect, test } from "vitest";
import { dateOf, dayNumber, daysBetween, daysPerMonth, yearsBetween } from "../../../src/analysis/years/day-number.ts";

test("1 March 2024 is day 19783, and back", () => {
  expect(dayNumber("2024-03-01")).toBe(19783);
  expect(dateOf(19783)).toBe("2024-03-01");
});

test("days are counted over leap days and before 1970", () => {
  expect(dayNumber("1970-01-01")).toBe(0);
  expect(dayNumber("1969-12-31")).toBe(-1);
  expect(dayNumber("2024-03-01") - dayNumber("2024-02-28")).toBe(2);
  expect(dayNumber("2025-03-01") - dayNumber("2025-02-28")).toBe(1);
  for (const day of [-1, 0, 11_016, 19_782, 40_000]) expect(dayNumber(dateOf(day))).toBe(day);
});

test.each(["", "yesterday", "2024-13-01", "2024-03-01T12:00:00Z"])("%j is no date", (text) => {
  expect(() => dayNumber(text)).toThrow(RangeError);
});

test("days are counted over the ends of months, leap years and the changes of clocks", () => {
  expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
  expect(daysBetween("2023-02-28", "2023-03-01")).toBe(1);
  expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
  expect(daysBetween("2026-01-02", "2026-01-01")).toBe(-1);
});

test("four years with a leap day are four years, and twelve months one", () => {
  expect(yearsBetween("2022-01-01", "2026-01-01")).toBe(4);
  expect(12 * daysPerMonth).toBe(365.25);
});
