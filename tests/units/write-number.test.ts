import * as fc from "fast-check";
import { expect, test } from "vitest";
import {
  decimalsForSignificant,
  placeOfSignificant,
  writeFixed,
  writePlain,
  writeSigned,
  writeSignificant,
  writeToPlace,
} from "../../src/units/write-number.ts";
import { howMany } from "../how-many.ts";

test.each([
  [-0.4996, 2, "−0.50"],
  [-0.004, 2, "0.00"],
  [0, 1, "0.0"],
  [-0, 1, "0.0"],
  // Halves go away from zero; so does 1.005, which is held as 1.00499999999999989….
  [0.125, 2, "0.13"],
  [-0.125, 2, "−0.13"],
  [2.5, 0, "3"],
  [1.005, 2, "1.01"],
  [-1.005, 2, "−1.01"],
  [1.00499999999999, 2, "1.00"],
  [5e-7, 6, "0.000001"],
  [1e21, 1, "1000000000000000000000.0"],
  [-1e22, 0, "−10000000000000000000000"],
])("%d to %d decimals is %s", (value, decimals, text) => {
  expect(writeFixed(value, decimals)).toBe(text);
});

test.each([
  [0.25, 2, "+0.25"],
  [-0.25, 2, "−0.25"],
  [0.004, 2, "0.00"],
  [0, 2, "0.00"],
])("%d signed to %d decimals is %s", (value, decimals, text) => {
  expect(writeSigned(value, decimals)).toBe(text);
});

test.each([
  [0.00123449, 4, "0.001234"],
  [12345, 3, "12300"],
  [0.0996, 2, "0.10"],
  [999.6, 3, "1000"],
  [-20, 4, "−20.00"],
  [0, 3, "0.00"],
  [1e-200, 2, `0.${"0".repeat(100)}`],
])("%d to %d significant digits is %s", (value, digits, text) => {
  expect(writeSignificant(value, digits)).toBe(text);
});

test.each([
  [-12350, 2, "−12400"],
  [12349, 2, "12300"],
  [49, 2, "0"],
  [50, 2, "100"],
  [0.5, 0, "1"],
])("%d to place %d is %s", (value, place, text) => {
  expect(writeToPlace(value, place)).toBe(text);
});

test.each([
  [1234, 2, 2],
  [0.0996, 2, -2],
  [9.95, 2, 0],
  [9.94, 2, -1],
  [0, 2, -1],
])("%d to %d significant digits ends at place %d", (value, digits, place) => {
  expect(placeOfSignificant(value, digits)).toBe(place);
});

test.each([
  [0.0996, 2, 2],
  [0.0994, 2, 3],
  [1234, 2, 0],
  [1, 3, 2],
])("%d to %d significant digits needs %d decimals", (value, digits, decimals) => {
  expect(decimalsForSignificant(value, digits)).toBe(decimals);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])("%d is refused and never printed", (value) => {
  expect(() => writeFixed(value, 1)).toThrow(RangeError);
  expect(() => writeSigned(value, 1)).toThrow(RangeError);
  expect(() => writeSignificant(value, 3)).toThrow(RangeError);
  expect(() => decimalsForSignificant(value, 3)).toThrow(RangeError);
});

test("a plain number has the digits that it was typed with", () => {
  expect(writePlain(0.1 + 0.2)).toBe("0.3");
  expect(writePlain(600)).toBe("600");
  expect(writePlain(-12.75)).toBe("−12.75");
  expect(writePlain(1.25e-9)).toBe("0.00000000125000");
});

test.each([
  [1800, "1800"],
  [0.1 + 0.2, "0.3"],
  [-4, "−4"],
  [1e-7, "0.000000100000"],
  [27648, "27648"],
  [1e21, "1000000000000000000000"],
])("%d as a constant of a formula is %s", (value, written) => {
  expect(writePlain(value)).toBe(written);
});

/** By whole numbers alone: the digits of the shortest decimal number, halves rounded up. */
function byWholeNumbers(value: number, decimals: number): string {
  const [mantissa = "", exponent] = Math.abs(value).toExponential().split("e");
  const digits = BigInt(mantissa.replace(".", ""));
  const power = Number(exponent) - (mantissa.replace(".", "").length - 1) + decimals;
  const part = 10n ** BigInt(Math.max(0, -power));
  const units = (2n * digits * 10n ** BigInt(Math.max(0, power)) + part) / (2n * part);
  const text = String(units).padStart(decimals + 1, "0");
  const written = decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
  return value < 0 && units > 0n ? `−${written}` : written;
}

test("the quick way writes what whole numbers give, beside halves too", () => {
  const decimals = fc.integer({ min: 0, max: 14 });
  const typed = fc.tuple(fc.integer({ min: -(10 ** 7), max: 10 ** 7 }), fc.integer({ min: 0, max: 9 }));
  const near = typed.map(([whole, power]) => whole / 10 ** power);
  const values = fc.oneof(near, fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }));
  const beside = fc
    .tuple(values, fc.integer({ min: -3, max: 3 }))
    .map(([value, steps]) => value * (1 + steps * 2 ** -52));
  fc.assert(
    fc.property(beside, decimals, (value, count) => {
      expect(writeFixed(value, count)).toBe(byWholeNumbers(value, count));
    }),
    { numRuns: howMany(1500, 5000) },
  );
});
