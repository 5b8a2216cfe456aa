import { expect, test } from "vitest";
import { withColumn, withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test.each([
  ["air_min,air_max", "20,20", "air_max"],
  ["supply_min,supply_max", "30,10", "supply_max"],
  ["fault_low,fault_high", "21,3.6", "fault_high"],
])("%s of %s are the wrong way round", async (columns, cells, blamed) => {
  expect(await told(withColumn("instruments.csv", columns, cells))).toEqual([
    `model/limits-reversed instruments:2:${blamed}`,
  ]);
});

test("limits in order, and one limit alone, are right", async () => {
  expect(await told(withColumn("instruments.csv", "air_min,air_max", "-10,40"))).toEqual([]);
  expect(await told(withColumn("instruments.csv", "fault_low", "3.6"))).toEqual([]);
});

test("a candidate's supply is held to the same", async () => {
  expect(await told(withFile("candidates.csv", "candidate,supply_min,supply_max\nA,30,10\n"))).toEqual([
    "model/limits-reversed candidates:2:supply_max",
  ]);
});
