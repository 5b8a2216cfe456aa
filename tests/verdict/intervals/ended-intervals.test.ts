import { expect, test } from "vitest";
import { recordsOfOneLoop } from "../../../src/analysis/years/records-of-one-loop.ts";
import { endedIntervals, isLeftInTolerance } from "../../../src/verdict/intervals/ended-intervals.ts";
import { steadyYears, yearPhase, yearRecord } from "../../assembly/sample-years.ts";

const ended = (...records: typeof steadyYears) => endedIntervals(recordsOfOneLoop(records).records);

test("each interval that began in tolerance has its end: statement, greatest part of the tolerance, days", () => {
  expect(endedIntervals([])).toEqual([]);
  expect(ended(...steadyYears).map((interval) => interval?.days)).toEqual([364, 371, 364, 364]);
  expect(ended(...steadyYears).at(-1)).toEqual({ asFound: "pass", partOfTolerance: 2.1 / 5, days: 364 });
});

test("one that began outside, that nobody read at its end, or that is of one day did not end", () => {
  const [first, second] = [yearRecord("2024-01-01", yearPhase([0, 6, 0], "fail")), yearRecord("2025-01-01", [0, 1, 0])];
  expect(ended(first, second)).toEqual([undefined]);
  expect(ended(second, yearRecord("2026-01-01", null, { asLeft: yearPhase([0, 0, 0]) }))).toEqual([undefined]);
  expect(ended(second, { ...second, calibration: "C-2" })).toEqual([undefined]);
});

test("where a side of the tolerance allows nothing, there is no part to speak of", () => {
  const phase = yearPhase([1, 0, 0]);
  const free = { ...phase, points: phase.points.map((point) => ({ ...point, toleranceHigh: 0 })) };
  expect(ended(yearRecord("2024-01-01", [0, 0, 0]), yearRecord("2025-01-01", free))[0]?.partOfTolerance).toBeNull();
});

test("what a visit left decides, not what it found", () => {
  const failed = yearRecord("2024-01-01", yearPhase([0, 6, 0], "fail"), { adjustment: "re-teach" });
  expect(isLeftInTolerance({ ...failed, asLeft: yearPhase([0, 0, 0]) })).toBe(true);
  expect(isLeftInTolerance(failed)).toBe(false);
});
