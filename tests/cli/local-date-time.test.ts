import { afterEach, expect, test, vi } from "vitest";
import { localDate, localDateTime, localTime } from "../../src/cli/local-date-time.ts";

afterEach(() => vi.restoreAllMocks());

// The same moment, 2026-11-25T13:05:00.250Z, where clocks stand so many minutes from UTC.
test.each([
  [0, "2026-11-25T13:05:00.250+00:00"],
  [60, "2026-11-25T14:05:00.250+01:00"],
  [345, "2026-11-25T18:50:00.250+05:45"],
  [-210, "2026-11-25T09:35:00.250-03:30"],
  [-840, "2026-11-24T23:05:00.250-14:00"],
])("%i minutes from UTC: %s", (minutes, text) => {
  const moment = new Date(Date.UTC(2026, 10, 25, 13, 5, 0, 250));
  vi.spyOn(moment, "getTimezoneOffset").mockReturnValue(-minutes);
  expect(localDateTime(moment)).toBe(text);
  expect(new Date(text).getTime()).toBe(moment.getTime());
});

test("the day and the time to the second are those of the place, not of Greenwich", () => {
  const moment = new Date(Date.UTC(2026, 10, 25, 23, 5, 59, 999));
  vi.spyOn(moment, "getTimezoneOffset").mockReturnValue(-120);
  expect(localDate(moment)).toBe("2026-11-26");
  expect(localTime(moment)).toBe("2026-11-26T01:05:59+02:00");
});
