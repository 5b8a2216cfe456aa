import { expect, test } from "vitest";
import { columnLetter, isFormula, liveWhere } from "../../src/spreadsheet/cell.ts";

test("columns are lettered as a spreadsheet letters them", () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetter)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
});

test("a cell is live where the record has a figure, and empty where it has none", () => {
  expect(liveWhere(0, "A1-B1")).toEqual({ formula: "A1-B1", is: 0 });
  expect(liveWhere(null, "A1-B1")).toBe(null);
  expect(liveWhere(undefined, "A1-B1")).toBe(null);
});

test("text is no formula, whatever it begins with", () => {
  expect(["=1+1", 5, null, { formula: "1+1" }].map(isFormula)).toEqual([false, false, false, true]);
});
