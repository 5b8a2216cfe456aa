import { expect, test } from "vitest";
import type { YearRecord } from "../../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import { historyLines, historyRows } from "../../../src/jobs/filing/history-rows.ts";
import { steadyYears, yearRecord } from "../../assembly/sample-years.ts";

const historyFrom = (records: readonly YearRecord[]) => ({
  tag: "LT-1",
  description: undefined,
  location: undefined,
  distanceUnit: "mm",
  rangeLower: 0,
  rangeUpper: 1000,
  intervalMonths: 12,
  intervalAgreedBy: undefined,
  overTheYears: overTheYears(records, { intervalMonths: 12 })!,
});

test("a row a record, the first naming the columns", () => {
  const rows = historyRows(historyFrom(steadyYears));
  expect(rows[0]).toEqual([
    "calibrated",
    "calibration",
    "as found",
    "error ± U, mm",
    "adjustment",
    "as left",
    "error ± U, mm",
  ]);
  expect(rows[1]).toEqual(["2020-03-02", "C-2020-03", "pass", "+4.40 ± 0.40", "re-teach", "pass", "+0.20 ± 0.40"]);
  expect(rows).toHaveLength(6);
});

test("a line for the place, the drift, the forecast, the reliability, each proposal, and who decides", () => {
  expect(historyLines(historyFrom(steadyYears))).toEqual([
    "errors at the test point 500 mm",
    "drift, mm a year, with its 95 % confidence interval: +0.48, from +0.41 to +0.55",
    "95 % prediction: meets the upper limit on 2029-01-08",
    "found in tolerance at the end of an interval: 4 of 4 (100 %); the rate behind it lies between 39.8 % and 100 % with 95 % confidence (Clopper and Pearson, two-sided).",
    "interval by ILAC-G24 method 1, staircase: 15 months, until 2025-06-04",
    "interval by ILAC-G24 method 2, control chart: 36 months, until 2027-03-04",
    "the owner of the loop decides; nothing is changed by itself",
  ]);
});

test("what is not enough, and what is not taken, is told", () => {
  const lines = historyLines(historyFrom([yearRecord(null, [0, 0, 0]), yearRecord("2024-01-01", [1, 2, 3])]));
  expect(lines).toContain("drift: not enough: one record");
  expect(lines.at(-1)).toBe("not taken: C-?: its day is not stated");
  expect(historyLines(historyFrom([yearRecord("2024-01-01", [])]))[0]).toBe("no test point was judged");
});
