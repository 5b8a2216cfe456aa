import { expect, test } from "vitest";
import { readingTimes } from "../../src/model/reading-times.ts";

test("times are minutes from the earliest, with a day or without, past midnight too", () => {
  expect(readingTimes(["10:00", "10:01:30", "11:00"])?.minutes).toEqual([0, 1.5, 60]);
  expect(readingTimes(["2026-05-12T23:50", "2026-05-13T00:10"])).toEqual({ minutes: [0, 20], backwardsAt: undefined });
  expect(readingTimes(["23:50", "23:55", "00:10", "00:20"])).toEqual({
    minutes: [0, 5, 20, 30],
    backwardsAt: undefined,
  });
});

test("a time before the one above it is found", () => {
  expect(readingTimes(["10:00", "10:05", "10:04", "10:06"])?.backwardsAt).toBe(2);
  expect(readingTimes(["2026-05-12T22:00", "2026-05-12T09:00"])).toEqual({ minutes: [780, 0], backwardsAt: 1 });
});

test("a time that is missing, or a clock that stands still, says nothing", () => {
  expect(readingTimes(["10:00", undefined, "10:05"])).toBeUndefined();
  expect(readingTimes(["10:00", "10:00"])).toBeUndefined();
  expect(readingTimes([])).toBeUndefined();
});
