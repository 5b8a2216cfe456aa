import { expect, test } from "vitest";
import { withColumn, withFile, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test.each(["counts_lower", "counts_upper", "value_lower", "value_upper", "second_tolerance_minus"])(
  "%s says nothing alone",
  async (column) => {
    expect(await told(withColumn("instruments.csv", column, "1"))).toEqual([
      `model/pair-incomplete instruments:2:${column}`,
    ]);
  },
);

test("a basis without its tolerance, and a tolerance without its basis", async () => {
  expect(await told(withColumn("instruments.csv", "second_tolerance_basis", "signal"))).toEqual([
    "model/pair-incomplete instruments:2:second_tolerance_basis",
  ]);
  expect(await told(withColumn("instruments.csv", "second_tolerance", "1"))).toEqual([
    "model/tolerance-two-sided-basis instruments:2:second_tolerance",
  ]);
  expect(await told(withColumn("instruments.csv", "second_tolerance,second_tolerance_basis", "1,signal"))).toEqual([]);
});

test("a two-sided tolerance needs no more than its lower side", async () => {
  expect(await told(withColumn("instruments.csv", "tolerance_minus", "0.3"))).toEqual([]);
});

test("the ends of a scale differ; it may run downwards", async () => {
  expect(await told(withColumn("instruments.csv", "counts_lower,counts_upper", "5,5"))).toEqual([
    "model/pair-flat instruments:2:counts_upper",
  ]);
  expect(await told(withColumn("instruments.csv", "counts_lower,counts_upper", "27648,0"))).toEqual([]);
});

test("a candidate's range needs both ends and a unit, its signal too, its accuracy a basis", async () => {
  const header = "candidate,range_lower,signal_lower,accuracy\n";
  expect(await told(withFile("candidates.csv", `${header}A,0,4,0.5\n`))).toEqual([
    "model/pair-incomplete candidates:2:range_lower",
    "model/pair-incomplete candidates:2:range_lower",
    "model/pair-incomplete candidates:2:signal_lower",
    "model/pair-incomplete candidates:2:signal_lower",
    "model/pair-incomplete candidates:2:accuracy",
  ]);
});

test("an uncertainty without its unit is none", async () => {
  expect(await told(withText("standards.csv", "0.02,mm", "0.02,"))).toEqual([
    "model/pair-incomplete standards:2:expanded_uncertainty",
  ]);
});

test("an accuracy needs what its basis is a part of", async () => {
  const header =
    "candidate,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit,accuracy,accuracy_basis\n";
  const toldOf = (row: string) => told(withFile("candidates.csv", `${header}${row}\n`));
  expect(await toldOf("A,,,,,,,0.5,distance")).toEqual(["model/pair-incomplete candidates:2:accuracy"]);
  expect(await toldOf("A,,,,,,,0.5,percent of span")).toEqual(["model/pair-incomplete candidates:2:accuracy"]);
  expect(await toldOf("A,0,9,mm,,,,0.1,signal")).toEqual(["model/pair-incomplete candidates:2:accuracy"]);
  expect(await toldOf("A,,,,,,,0.5,percent of reading")).toEqual([]);
  expect(await toldOf("A,0,9,mm,4,20,mA,0.1,signal")).toEqual([]);
});
