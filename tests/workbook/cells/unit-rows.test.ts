import { expect, test } from "vitest";
import { UnitRows } from "../../../src/workbook/cells/unit-rows.ts";
import type { DraftRow } from "../../../src/workbook/table-row.ts";

const draft = (row: DraftRow["row"]): DraftRow => ({ row, file: "x.csv", line: 2, cells: {} });

const unitRows = new UnitRows();
unitRows.learn("instruments", [
  draft({ tag: "LT-1", distanceUnit: "mm" }),
  draft({ tag: "LT-1", distanceUnit: "in" }),
  draft({ tag: "LT-2", distanceUnit: "m" }),
]);
unitRows.learn("calibrations", [draft({ calibration: "C-1", tag: "LT-2" })]);

test("an instrument, a candidate and a standard name their own units", () => {
  for (const table of ["instruments", "candidates", "standards"] as const) {
    expect(unitRows.finderFor(table)({ distanceUnit: "ft" })).toEqual({ distanceUnit: "ft" });
  }
});

test("an output and a calibration find them through the tag; of two rows of one tag the first counts", () => {
  expect(unitRows.finderFor("outputs")({ tag: "LT-1" })?.distanceUnit).toBe("mm");
  expect(unitRows.finderFor("calibrations")({ tag: "LT-2" })?.distanceUnit).toBe("m");
});

test("a reading and a trip find them through the calibration's tag", () => {
  expect(unitRows.finderFor("readings")({ calibration: "C-1" })?.distanceUnit).toBe("m");
  expect(unitRows.finderFor("trips")({ calibration: "C-9" })).toBeUndefined();
});
