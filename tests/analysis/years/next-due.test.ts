import { expect, test } from "vitest";
import { monthsLater, nextDueDate } from "../../../src/analysis/years/next-due.ts";

test("a date runs to the last day of its month where that was agreed", () => {
  expect(nextDueDate("2026-03-17", 6, "month end")).toBe("2026-09-30");
  expect(nextDueDate("2026-03-17", 6, "day")).toBe("2026-09-17");
  expect(nextDueDate("2027-02-28", 12, "month end")).toBe("2028-02-29");
  expect(nextDueDate("2026-12-31", 12, "month end")).toBe("2027-12-31");
});

test("six months after 31 August 2026 is the last day of February 2027", () => {
  expect(monthsLater("2026-08-31", 6)).toBe("2027-02-28");
});

test.each([
  ["2026-01-15", 12, "2027-01-15"],
  ["2026-01-31", 1, "2026-02-28"],
  ["2028-01-31", 1, "2028-02-29"],
  ["2028-02-29", 12, "2029-02-28"],
  ["2026-12-31", 2, "2027-02-28"],
  ["2026-11-30", 3, "2027-02-28"],
  ["2026-03-31", 18, "2027-09-30"],
  ["2026-03-04", 1.9, "2026-04-04"],
])("%s and %d months: %s", (from, months, due) => {
  expect(monthsLater(from, months)).toBe(due);
});
