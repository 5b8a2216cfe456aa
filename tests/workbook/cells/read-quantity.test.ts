import { expect, test } from "vitest";
import type { Column, UnitSource } from "../../../src/model/column.ts";
import type { UnitRow } from "../../../src/workbook/cells/expected-unit.ts";
import { readQuantity } from "../../../src/workbook/cells/read-quantity.ts";

type NumberColumn = Extract<Column, { reads: "number" }>;

const column = (unit: UnitSource, bounds: Partial<NumberColumn> = {}): NumberColumn => ({
  reads: "number",
  unit,
  required: false,
  about: "",
  key: "x",
  name: "x",
  ...bounds,
});
const row: UnitRow = { distanceUnit: "mm", signalUnit: "mA", toleranceBasis: "distance", uncertaintyUnit: "°C" };
const read = (text: string, unit: UnitSource, unitRow: UnitRow | undefined = row) =>
  readQuantity(text, column(unit), "point", unitRow);

// 1 in = 25.4 mm exactly; the other factors are powers of ten.
test.each<[string, UnitSource, number]>([
  ["12.5", "distance", 12.5],
  ["12.5 mm", "distance", 12.5],
  ["2 in", "distance", 50.8],
  ["2 inches", "distance", 50.8],
  ['2"', "distance", 50.8],
  ["1.5 m", "distance", 1500],
  ["0.012 A", "signal", 12],
  ["0.5 mm", "tolerance", 0.5],
  ["0.05 cm", "tolerance", 0.5],
  ["298.15 K", "°C", 25],
  ["45 %RH", "%", 45],
  ["1 bar", "hPa", 1000],
  ["2 years", "months", 24],
])("%j of %s is %d", (text, unit, value) => {
  expect(read(text, unit)).toEqual({ value });
});

test.each<[string, UnitSource, string]>([
  ["0.5 %", "tolerance", "mm"],
  ["12 V", "signal", "mA"],
  ["12 mm", "signal", "mA"],
  ["20 °C", "distance", "mm"],
  ["5 mm", "none", "nothing behind it"],
])("%j of %s is of another kind than %s", (text, unit, expected) => {
  expect(read(text, unit)).toMatchObject({ code: "tables/cell-unit-kind", values: { expected } });
});

test("half a kelvin of uncertainty is half a degree Celsius, not a temperature below zero", () => {
  expect(read("0.5 K", "stated by row")).toEqual({ value: 0.5 });
});

test("a unit that no table knows is told with the one that is expected", () => {
  expect(read("5 furlong", "distance")).toEqual({
    code: "tables/cell-unit-unknown",
    values: { unit: "furlong", expected: "mm" },
  });
});

test("a controller value takes the word that the instrument gives it, and converts if both are known", () => {
  expect(read("12 l/min", "controller value", { valueUnit: "l/min" })).toEqual({ value: 12 });
  expect(read("1.5 m", "controller value", { valueUnit: "cm" })).toEqual({ value: 150 });
  expect(read("12 mm", "controller value", { valueUnit: "l/min" })).toMatchObject({ code: "tables/cell-unit-kind" });
  expect(read("12 gal", "controller value", { valueUnit: "l" })).toMatchObject({ code: "tables/cell-unit-unknown" });
  expect(read("12 mm", "controller value", {})).toMatchObject({
    code: "tables/cell-unit-unknown",
    values: { expected: "the value_unit of the table instruments" },
  });
});

test("where the row that names the unit has a problem of its own, nothing is added to it", () => {
  expect(read("12 mm", "distance", {})).toEqual({ value: 12 });
  expect(read("12 mm", "distance", undefined)).toMatchObject({ value: 12 });
});

test.each<[Partial<NumberColumn>, string, string]>([
  [{ above: 0 }, "0", "above 0"],
  [{ atLeast: 0 }, "-0.1", "0 or more"],
  [{ above: 0, atMost: 100 }, "100.5", "above 0, at most 100"],
  [{ atMost: 90 }, "91", "at most 90"],
  [{}, "1e13", "0, or a size from 1e-12 to 1e12"],
  [{}, "-1e-13", "0, or a size from 1e-12 to 1e12"],
])("within %j the text %j is refused: %s", (bounds, text, told) => {
  expect(readQuantity(text, column("distance", bounds), "point", row)).toEqual({
    code: "tables/cell-out-of-bounds",
    values: { bounds: told },
  });
});

test("bounds hold for the converted number, and their ends are inside", () => {
  expect(readQuantity("1 m", column("distance", { atMost: 999 }), "point", row)).toMatchObject({
    code: "tables/cell-out-of-bounds",
  });
  expect(readQuantity("0", column("distance", { atLeast: 0 }), "point", row)).toEqual({ value: 0 });
});

test("the example of what is accepted is written with the mark of the file", () => {
  expect(readQuantity("x", column("signal"), "comma", row)).toMatchObject({ values: { example: "12,02" } });
  expect(readQuantity("x", column("signal"), "point", row)).toMatchObject({ values: { example: "12.02" } });
});

test("an interval is whole months, one or more; a year is twelve of them", () => {
  const months = (text: string) => readQuantity(text, column("months", { atLeast: 1, isWhole: true }), "point", row);
  expect(months("6")).toEqual({ value: 6 });
  expect(months("0.5 years")).toEqual({ value: 6 });
  expect(months("0.5")).toEqual({ code: "tables/cell-not-whole", values: {} });
  expect(months("1.5")).toMatchObject({ code: "tables/cell-not-whole" });
  expect(months("0")).toEqual({ code: "tables/cell-out-of-bounds", values: { bounds: "1 or more" } });
});
