import { expect, test } from "vitest";
import { smallestWorkbook, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const used = "2026-03-04";

test("on its last day, and on the day of its certificate, a standard is fit for use", async () => {
  expect(await told(withText("standards.csv", "2027-06-01", used))).toEqual([]);
  expect(await told(withText("standards.csv", "2025-06-01", used))).toEqual([]);
});

test("a day late or a day early is told at the calibration that used it", async () => {
  expect(await told(withText("standards.csv", "2027-06-01", "2026-03-03"))).toEqual([
    "model/standard-overdue calibrations:2:standards",
  ]);
  expect(await told(withText("standards.csv", "2025-06-01", "2026-03-05"))).toEqual([
    "model/standard-not-yet-calibrated calibrations:2:standards",
  ]);
});

test("a standard due before it was calibrated is refused at its own row", async () => {
  expect(await told(withText("standards.csv", "2025-06-01", "2027-06-02"))).toEqual([
    "model/due-before-calibrated standards:2:due_on",
    "model/standard-not-yet-calibrated calibrations:2:standards",
  ]);
});

test("an uncertainty that cannot be read is not told as missing too", async () => {
  expect(await told(withText("standards.csv", "0.02", "small"))).toEqual([
    "tables/cell-not-number standards:2:expanded_uncertainty",
  ]);
});

test("a first look asks for none of it", async () => {
  expect(await told(withText("calibrations.csv", "GB-1", ""), true)).toEqual([]);
  expect(await told(withText("standards.csv", "2027-06-01", "2026-03-03"), true)).toEqual([]);
  expect(smallestWorkbook["calibrations.csv"]).toContain(used);
});
