import { expect, test } from "vitest";
import { monthsLater } from "../../src/record/next-due.ts";

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
