import { expect, test } from "vitest";
import { rankOf, withoutUnit } from "../../../src/workbook/look/column-names.ts";

test.each([
  ["Distance (mm)", "Distance", "mm"],
  ["distance_mm", "distance", "mm"],
  ["Output in mA", "Output", "mA"],
  ["mA", "", "mA"],
  ["in", "", "in"],
  ["going in", "going", "in"],
  ["signal", "signal", undefined],
  ["level (kg)", "level (kg)", undefined],
])("%s is %j in %j", (header, name, unit) => {
  expect(withoutUnit(header)).toEqual({ name, unit });
});

test.each([
  ["distance", "reference"],
  ["Actual", "reference"],
  ["mm", "reference"],
  ["mA", "signal"],
  ["V", "signal"],
  ["reading", "signal"],
  ["Output (V)", "signal"],
  ["set", "point"],
  ["Set point", "point"],
  ["up/down", "direction"],
  ["Up-Down", "direction"],
  ["PLC", "value"],
  ["raw", "counts"],
  ["run", "cycle"],
  ["before/after", "phase"],
  ["Comments", "remark"],
])("%s may mean %s", (header, column) => {
  expect(rankOf(header, column)).toBeDefined();
});

test("a name of its own goes before one of people, and a unit of another kind rules a column out", () => {
  expect(rankOf("signal", "signal")).toBe(0);
  expect(rankOf("Reference (mm)", "reference")).toBe(0);
  expect(rankOf("current", "signal")).toBeGreaterThan(0);
  expect(rankOf("distance (mA)", "reference")).toBeUndefined();
  expect(rankOf("output (mm)", "signal")).toBeUndefined();
  expect(rankOf("colour", "remark")).toBeUndefined();
});
