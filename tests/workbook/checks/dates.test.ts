import { expect, test } from "vitest";
import { withColumn, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test("work done today is not in the future, work dated tomorrow is", async () => {
  expect(await told(withText("calibrations.csv", "2026-03-04", "2026-11-25"))).toEqual([]);
  expect(await told(withText("calibrations.csv", "2026-03-04", "2026-11-26"))).toEqual([
    "model/performed-in-future calibrations:2:performed_on",
  ]);
  expect(await told(withText("calibrations.csv", "2026-03-04", "2026-11-26"), true)).toEqual([]);
});

test("all on one day is in order", async () => {
  const columns = "received_on,reviewed_on,approved_on,issued_on";
  const day = "2026-03-04";
  expect(await told(withColumn("calibrations.csv", columns, [day, day, day, day].join(",")))).toEqual([]);
});

test.each([
  ["received_on", "2026-03-05", "performed_on"],
  ["reviewed_on", "2026-03-03", "reviewed_on"],
  ["approved_on", "2026-03-03", "approved_on"],
  ["issued_on", "2026-03-03", "issued_on"],
  ["reviewed_on,issued_on", "2026-03-06,2026-03-05", "issued_on"],
])("%s of %s beside work on 2026-03-04 is told at %s", async (columns, cells, blamed) => {
  expect(await told(withColumn("calibrations.csv", columns, cells))).toEqual([
    `model/dates-out-of-order calibrations:2:${blamed}`,
  ]);
});
