import { expect, test } from "vitest";
import { isDay } from "../../src/model/is-day.ts";

test("a day of the calendar by ISO 8601, four digits of the year and two of month and day", () => {
  for (const day of ["2026-11-25", "2024-02-29", "2000-02-29"]) expect(isDay(day), day).toBe(true);
  for (const text of ["2026-02-30", "1900-02-29", "2026-13-01", "2026-2-3", "25.11.2026", ""])
    expect(isDay(text), text).toBe(false);
});
