import { expect, test } from "vitest";
import { haveSameDistances, shareWords, testPointRows } from "../../../src/report/certificate/test-point-rows.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { demoRecord } from "../demo-records.ts";

const rowsOf = (tag: string) => testPointRows(demoRecord(tag), numberStyleOf(demoRecord(tag)));

test("a row says what the meter should show, what it showed, and how much of the tolerance that takes", () => {
  const rows = rowsOf("LT-310");
  expect(rows.map(({ name }) => name)).toEqual(["300", "975", "1650", "2325", "3000"]);
  // By hand: as found at 300 mm the references rising and falling are 299.17 mm in the mean, 4 + (299.17 - 300) / 2700 * 16 mA.
  expect(rows[0]?.of.asFound).toEqual({
    ...{ distance: "299.2", expected: "3.995", rising: "4.118", falling: "4.125" },
    // ±0.5 % of 2700 mm is 13.5 mm; 24.3 / 13.5 is 1.80.
    ...{ error: "+24.3", shareOfTolerance: "180", statement: "fail" },
  });
  expect(haveSameDistances(rows)).toBe(false);
});

test("where a later stage decides, what it should give and what it gave stand beside the signal", () => {
  const [, row] = rowsOf("LT-702");
  expect(row?.of.asFound).toMatchObject({ expected: "8.002", further: { expected: "74.99", rising: "75.51" } });
  expect(row?.of.asFound?.error).toMatch(/^−0\.0403 ± 0\.0052$/u);
});

test("no share reads 100 for what lies outside, nor more for what lies inside", () => {
  const limits = { toleranceLow: -1, toleranceHigh: 1 };
  expect(shareWords(0.483, limits)).toBe("48");
  expect(shareWords(1, limits)).toBe("100");
  expect(shareWords(-1.0004, limits)).toBe("100.04");
  expect(shareWords(0.9996, limits)).toBe("100");
  expect(shareWords(0, { toleranceLow: 0, toleranceHigh: 0 })).toBe("0");
  expect(shareWords(0.1, { toleranceLow: 0, toleranceHigh: 0 })).toBe("–");
});
