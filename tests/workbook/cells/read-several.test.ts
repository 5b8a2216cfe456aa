import { expect, test } from "vitest";
import { adjustments } from "../../../src/model/calibration-words.ts";
import { readSeveral } from "../../../src/workbook/cells/read-several.ts";
import { checked, withColumn } from "../smallest-workbook.ts";

const order = ["replace", "re-teach", "repair", "re-scale"];

test.each([
  ["re-teach; re-scale", "re-teach", ["re-scale"]],
  ["re-scale + re-teach", "re-teach", ["re-scale"]],
  ["Repair, Re teach and replace", "replace", ["re-teach", "repair"]],
  ["repair / repair & re-scale", "repair", ["re-scale"]],
])("%s: what weighs most, and the others", (text, value, others) => {
  expect(readSeveral(text, adjustments, order)).toEqual({ value, others });
});

test.each(["re-teach", "none", "none; re-teach", "re-teach; polish", ""])("%j is not several", (text) => {
  expect(readSeveral(text, adjustments, order)).toBeUndefined();
});

test("in a table they are the adjustment and what was adjusted besides", async () => {
  const { workbook, codes } = await checked(withColumn("calibrations.csv", "adjustment", "re-scale; re-teach"));
  expect(codes).toEqual(["model/adjustment-without-as-left"]);
  expect(workbook.calibrations[0]?.row).toMatchObject({ adjustment: "re-teach", alsoAdjusted: ["re-scale"] });
  const apart = await checked(withColumn("calibrations.csv", "adjustment,also_adjusted", "re-teach + repair,re-scale"));
  expect(apart.workbook.calibrations[0]?.row.alsoAdjusted).toEqual(["repair", "re-scale"]);
  expect((await checked(withColumn("calibrations.csv", "adjustment", "none; repair"))).codes).toEqual([
    "tables/cell-not-choice",
  ]);
});
