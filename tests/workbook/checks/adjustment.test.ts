import { expect, test } from "vitest";
import { smallestWorkbook, withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const found = smallestWorkbook["readings.csv"];
const left = found.replaceAll("as_found", "as_left");
const both = found + left.slice(left.indexOf("\n") + 1);

// What was adjusted, which readings there are, what is told at the calibration.
test.each([
  ["", found, []],
  ["none", found, []],
  ["re-teach", found, ["model/adjustment-without-as-left calibrations:2:adjustment"]],
  ["replace", found, ["model/adjustment-without-as-left calibrations:2:adjustment"]],
  ["", both, []],
  ["none", both, ["model/as-left-without-adjustment calibrations:2:adjustment"]],
  ["re-scale", both, []],
  ["repair", left, ["model/as-found-missing calibrations:2"]],
  [
    "none",
    left,
    ["model/as-left-without-adjustment calibrations:2:adjustment", "model/as-found-missing calibrations:2"],
  ],
])("adjustment %j", async (adjustment, readings, expected) => {
  expect(await told({ ...withColumn("calibrations.csv", "adjustment", adjustment), "readings.csv": readings })).toEqual(
    expected,
  );
});
