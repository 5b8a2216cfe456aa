import { expect, test } from "vitest";
import { readingResolutions, typedResolution } from "../../../src/assembly/phase/typed-resolution.ts";

const units = Object.freeze({ distanceUnit: "mm", signalUnit: "mA" } as const);
const references = (...texts: readonly string[]) =>
  texts.map((reference) => ({ file: "readings.csv", cells: { reference } }));
const point = () => "point" as const;

test("12.160 was typed with three decimals, a step of 0.001", () => {
  const rows = [{ file: "readings.csv", cells: { reference: "50.0", signal: "12.160" } }];
  expect(readingResolutions(rows, units, point)).toEqual({
    reference: { decimals: 1, step: 0.1 },
    signal: { decimals: 3, step: 0.001 },
    counts: { decimals: 0, step: 1 },
    value: { decimals: 0, step: 1 },
  });
});

test("a number in another unit has its step converted, and the decimals that show it", () => {
  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959); 1 foot 304.8 mm.
  expect(typedResolution(references("2 in"), "reference", "mm", point)).toEqual({ decimals: 1, step: 25.4 });
  expect(typedResolution(references("2.0 in"), "reference", "mm", point)).toEqual({ decimals: 1, step: 2.54 });
  expect(typedResolution(references("2.37 in"), "reference", "mm", point)).toEqual({ decimals: 3, step: 0.254 });
  expect(typedResolution(references("0.5 m"), "reference", "mm", point)).toEqual({ decimals: 0, step: 100 });
  const { decimals, step } = typedResolution(references("50.8 mm"), "reference", "in", point);
  expect(decimals).toBe(3);
  expect(Math.abs(step - 0.1 / 25.4)).toBeLessThan(1e-17); // one rounding of a number near 0.004
});

test("the unit of the column itself, or one that is none, changes nothing", () => {
  for (const text of ["50.80 mm", "50.80", "50.80 pt"]) {
    expect(typedResolution(references(text), "reference", "mm", point)).toEqual({ decimals: 2, step: 0.01 });
  }
  expect(typedResolution(references("5.0 mA"), "reference", "mm", point)).toEqual({ decimals: 1, step: 0.1 });
  expect(typedResolution(references("5.0"), "reference", undefined, point)).toEqual({ decimals: 1, step: 0.1 });
});

test("the finest of a column counts, by the decimal mark of the file; a cell that is no number does not", () => {
  const rows = references("0,25", "2 in", "none", "50");
  expect(typedResolution(rows, "reference", "mm", () => "comma")).toEqual({ decimals: 2, step: 0.01 });
  expect(typedResolution(rows, "reference", "mm", point)).toEqual({ decimals: 1, step: 1 });
  expect(typedResolution([], "reference", "mm", point)).toEqual({ decimals: 0, step: 1 });
});
