import fc from "fast-check";
import { expect, test } from "vitest";
import { convert, convertDifference } from "../../src/units/convert.ts";
import { type UnitSymbol, unitTable } from "../../src/units/unit-table.ts";

// Exact by definition: SI Brochure, 9th edition (2019), and the international yard and pound agreement (1959).
// 0 °C = 273.15 K; 32 °F = 0 °C and 212 °F = 100 °C by the definition of the Fahrenheit scale; 1 bar = 100 kPa.
// Tolerance: 4 units in the last place, for a product and a quotient of exact factors and the two offsets of the
// temperature scales.
test.each<[number, UnitSymbol, UnitSymbol, number]>([
  [2, "in", "mm", 50.8],
  [1, "ft", "in", 12],
  [1.5, "m", "cm", 150],
  [25, "cm", "mm", 250],
  [0.02, "A", "mA", 20],
  [12, "mA", "µA", 12000],
  [250, "mV", "V", 0.25],
  [25, "°C", "K", 298.15],
  [0, "K", "°C", -273.15],
  [212, "°F", "°C", 100],
  [32, "°F", "K", 273.15],
  [1, "bar", "kPa", 100],
  [1013.25, "hPa", "Pa", 101325],
  [0.25, "kΩ", "Ω", 250],
  [Math.PI, "rad", "°", 180],
  [2, "years", "months", 24],
])("%d %s in %s is %d", (value, from, to, expected) => {
  const allowed = 4 * Number.EPSILON * Math.max(Math.abs(expected), 273.15 * Number(unitTable[from].offset !== 0));
  expect(Math.abs(convert(value, from, to) - expected)).toBeLessThanOrEqual(allowed);
});

test("-40 is the same temperature on the scales of Celsius and Fahrenheit", () => {
  // Tolerance: 4 units in the last place of 40.
  expect(Math.abs(convert(-40, "°C", "°F") + 40)).toBeLessThanOrEqual(160 * Number.EPSILON);
});

test("a difference of temperatures has no zero point: 0.5 K is 0.5 °C, 1.8 °F is 1 K", () => {
  expect(convertDifference(0.5, "K", "°C")).toBe(0.5);
  expect(convertDifference(1.8, "°F", "K")).toBe(1);
  expect(convertDifference(2, "in", "mm")).toBe(50.8);
  expect(convertDifference(0.1, "mm", "mm")).toBe(0.1);
});

test("a unit of another kind is refused", () => {
  expect(() => convert(1, "mm", "mA")).toThrow("mm and mA are different kinds of unit");
  expect(() => convertDifference(1, "°C", "%")).toThrow(RangeError);
});

test("there and back is the same value, and no conversion leaves it to the last bit", () => {
  const symbols = Object.keys(unitTable) as UnitSymbol[];
  const pairs = symbols.flatMap((from) =>
    symbols.filter((to) => unitTable[from].kind === unitTable[to].kind).map((to) => [from, to] as const),
  );
  fc.assert(
    fc.property(fc.constantFrom(...pairs), fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([from, to], value) => {
      expect(convert(value, from, from)).toBe(value);
      // 1e-9 absolute: 1e6 with a relative rounding of about 1e-16 at four steps, through offsets of up to 460.
      expect(Math.abs(convert(convert(value, from, to), to, from) - value)).toBeLessThan(1e-9);
    }),
    { seed: 20261125 },
  );
});
