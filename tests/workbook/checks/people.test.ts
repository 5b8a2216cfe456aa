import { expect, test } from "vitest";
import { withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test.each(["T. Example", "t example", "T.EXAMPLE ", "T Example"])("%j is who performed it", async (name) => {
  expect(await told(withColumn("calibrations.csv", "reviewed_by,approved_by", `${name},${name}`))).toEqual([
    "model/reviewer-is-performer calibrations:2:reviewed_by",
    "model/reviewer-is-performer calibrations:2:approved_by",
  ]);
});

test.each(["T. Exampla", "R. Example", "Example"])("%j is somebody else", async (name) => {
  expect(await told(withColumn("calibrations.csv", "reviewed_by", name))).toEqual([]);
});
