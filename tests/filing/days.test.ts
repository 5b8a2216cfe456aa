import { expect, test } from "vitest";
import { daysBetween, daysLater, yearsBetween } from "../../src/filing/days.ts";

test("days are counted over the ends of months, leap years and the changes of clocks", () => {
  expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
  expect(daysBetween("2023-02-28", "2023-03-01")).toBe(1);
  expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
  expect(daysBetween("2026-01-02", "2026-01-01")).toBe(-1);
  expect(daysLater("2024-02-28", 2)).toBe("2024-03-01");
  expect(daysLater("2026-01-01", -1)).toBe("2025-12-31");
});

test("four years with a leap day are four years", () => {
  expect(yearsBetween("2022-01-01", "2026-01-01")).toBe(4);
});
