import { expect, test } from "vitest";
import { withColumn, withFile } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const limitAt = (value: string) =>
  withFile("controller_limits.csv", `tag,limit,value,acts\nLT-1,high,${value},above\n`);
const outside = ["model/limit-outside-range controller_limits:2:value"];

test("a limit within the range, or a little beyond it, is right; one far outside is told", async () => {
  for (const value of ["0", "50", "100", "110", "-10"]) expect(await told(limitAt(value))).toEqual([]);
  for (const value of ["110.1", "-10.1", "1000", "13000"]) expect(await told(limitAt(value))).toEqual(outside);
});

test("a scaled controller is held against its own values, falling ones too", async () => {
  const scaled = (value: string) => ({
    ...limitAt(value),
    "instruments.csv": withColumn("instruments.csv", "value_lower,value_upper,value_unit", "5000,1000,l")[
      "instruments.csv"
    ]!,
  });
  expect(await told(scaled("4900"))).toEqual([]);
  expect(await told(scaled("50"))).toEqual(outside);
});
