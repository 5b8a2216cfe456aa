import { expect, test } from "vitest";
import { withFile, withText } from "../smallest-workbook.ts";
import { told } from "./told.ts";

test("a range that ends where it begins, or before, is refused", async () => {
  expect(await told(withText("instruments.csv", "LT-1,0,100", "LT-1,100,100"))).toEqual([
    "model/range-empty instruments:2:range_upper",
  ]);
  expect(await told(withText("instruments.csv", "LT-1,0,100", "LT-1,100,0"))).toEqual([
    "model/range-reversed instruments:2:range_upper",
  ]);
});

test("the ends are compared in one unit", async () => {
  expect(await told(withText("instruments.csv", "LT-1,0,100", "LT-1,0,10 cm"))).toEqual([]);
  expect(await told(withText("instruments.csv", "LT-1,0,100", "LT-1,11 cm,100"))).toContain(
    "model/range-reversed instruments:2:range_upper",
  );
});

test("a reverse-acting loop is none that is wrong", async () => {
  expect(await told(withText("instruments.csv", "4,20", "20,4"))).toEqual([]);
});

test("a candidate's range and signal are held to the same", async () => {
  const header = "candidate,range_lower,range_upper,distance_unit,signal_lower,signal_upper,signal_unit\n";
  expect(await told(withFile("candidates.csv", `${header}A,100,50,mm,4,4,mA\n`))).toEqual([
    "model/range-reversed candidates:2:range_upper",
    "model/signal-flat candidates:2:signal_upper",
  ]);
});
