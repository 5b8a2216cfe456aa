import { expect, test } from "vitest";
import { expectedUnit, type UnitRow } from "../../../src/workbook/cells/expected-unit.ts";

const row: UnitRow = {
  distanceUnit: "cm",
  signalUnit: "V",
  valueUnit: "m³",
  toleranceBasis: "percent of reading",
  secondToleranceBasis: "signal",
  accuracyBasis: "distance",
  uncertaintyUnit: "µA",
};

test.each([
  ["distance", "cm"],
  ["signal", "V"],
  ["controller value", "m³"],
  ["tolerance", "%"],
  ["second tolerance", "V"],
  ["accuracy", "cm"],
  ["stated by row", "µA"],
  ["°C", "°C"],
  ["months", "months"],
  ["none", null],
] as const)("the unit of %s is %s", (source, unit) => {
  expect(expectedUnit(source, row)).toBe(unit);
});

test("where the row does not name it, or is not there, the unit is not known", () => {
  for (const source of ["distance", "signal", "controller value", "tolerance", "accuracy", "stated by row"] as const) {
    expect(expectedUnit(source, {})).toBeUndefined();
    expect(expectedUnit(source, undefined)).toBeUndefined();
  }
});
