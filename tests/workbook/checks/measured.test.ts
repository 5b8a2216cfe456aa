import { expect, test } from "vitest";
import { checked, smallestWorkbook, withColumn, withFile, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test("a reading of the controller value alone is a reading, and can be judged only where the value is scaled", async () => {
  const valued = smallestWorkbook["readings.csv"].replace(",signal", ",value");
  expect(await told(withFile("readings.csv", valued))).toEqual([
    "model/value-unscaled readings:2:value",
    "model/nothing-judged readings:2",
  ]);
  const scaled = withColumn("instruments.csv", "value_lower,value_upper", "4,20");
  expect(await told({ ...scaled, "readings.csv": valued })).toEqual([]);
});

test("a signal that cannot be read is told as such, not as missing too", async () => {
  expect(await told(withText("readings.csv", "8.01", "eight"))).toEqual(["tables/cell-not-number readings:3:signal"]);
});

test("unscaled counts are told once a calibration, and not where the instrument scales them", async () => {
  const counted = withColumn("readings.csv", "counts", "", "6912", "13824", "20736", "27648");
  expect(await told(counted)).toEqual(["model/counts-unscaled readings:3:counts"]);
  const scaled = withColumn("instruments.csv", "counts_lower,counts_upper", "0,27648");
  expect(await told({ ...counted, "instruments.csv": scaled["instruments.csv"] ?? "" })).toEqual([]);
});

test("a calibration without readings is told at its row, once, and the others go on", async () => {
  const texts = withFile(
    "calibrations.csv",
    `${smallestWorkbook["calibrations.csv"]}C-2,LT-1,2026-03-05,T. Example,GB-1\n`,
  );
  expect(await told(texts)).toEqual(["model/no-readings calibrations:3"]);
  expect((await checked(texts)).cases).toHaveLength(1);
});

// Range 0 to 100 mm: 10 % of span is 10 mm beyond either end.
test.each([
  ["0,4.01", "-10,4.01", []],
  ["0,4.01", "-10.001,4.01", ["model/reading-outside-range readings:2:reference"]],
  ["100,20.01", "110,20.01", []],
  ["100,20.01", "110.001,20.01", ["model/reading-outside-range readings:6:reference"]],
  ["100,20.01", "11.1 cm,20.01", ["model/reading-outside-range readings:6:reference"]],
])("%s becoming %s tells %j", async (from, to, expected) => {
  expect(await told(withText("readings.csv", from, to))).toEqual(expected);
});

test("exactly 10 % of a span that no double holds exactly is inside", async () => {
  const readings = "calibration,phase,direction,reference,signal\n";
  const rows = [0.02, 0.6, 1.1, 1.6, 2.18].map((reference) => `C-1,as_found,rising,${reference},5\n`).join("");
  const texts = { ...withText("instruments.csv", "0,100,mm", "0.2,2,m"), "readings.csv": readings + rows };
  expect(await told(texts)).toEqual([]);
});

test("a rejected reading is blamed for nothing more", async () => {
  const far = "C-1,as_found,falling,500,20,slipped\n";
  const text =
    smallestWorkbook["readings.csv"].replace("signal\n", "signal,rejected\n").replace(/\.01$/gmu, ".01,") + far;
  expect(await told(withFile("readings.csv", text))).toEqual([]);
});

// Signal 4 to 20 mA: 10 % of its span is 1.6 mA beyond either end.
test.each([
  ["25,8.01", "25,2.4", []],
  ["25,8.01", "25,2.399", ["model/signal-outside-range readings:3:signal"]],
  ["25,8.01", "25,21.6", []],
  ["25,8.01", "25,0.021601 A", ["model/signal-outside-range readings:3:signal"]],
])("a signal far outside its ends is noted: %s becoming %s tells %j", async (from, to, expected) => {
  expect(await told(withText("readings.csv", from, to))).toEqual(expected);
});

test("the signal ends of a reverse-acting loop are taken in their order", async () => {
  const reverse = withText("instruments.csv", "mm,4,20", "mm,20,4");
  const mistyped = smallestWorkbook["readings.csv"].replace("25,8.01", "25,80.1");
  expect(await told({ ...reverse, "readings.csv": mistyped })).toEqual([
    "model/signal-outside-range readings:3:signal",
  ]);
});
