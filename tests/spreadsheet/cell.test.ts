import { expect, test } from "vitest";
import { isFormula, liveWhere } from "../../src/spreadsheet/cell.ts";

test("a cell is live where the record has a figure, and empty where it has none", () => {
  expect(liveWhere(0, "A1-B1")).toEqual({ formula: "A1-B1", is: 0 });
  expect(liveWhere(null, "A1-B1")).toBe(null);
  expect(liveWhere(undefined, "A1-B1")).toBe(null);
});

test("text is no formula, whatever it begins with", () => {
  expect(["=1+1", 5, null, { formula: "1+1" }].map(isFormula)).toEqual([false, false, false, true]);
});
