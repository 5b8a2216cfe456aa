import { expect, test } from "vitest";
import { type UnitSymbol, unitOf, unitTable } from "../../src/units/unit-table.ts";

const symbols = Object.keys(unitTable) as UnitSymbol[];

test("no two units share a spelling, and every symbol spells itself", () => {
  const spellings = symbols.flatMap((symbol) => unitTable[symbol].spellings);
  expect(new Set(spellings).size).toBe(spellings.length);
  for (const symbol of symbols) expect(unitOf(symbol)).toBe(symbol);
});

test.each([
  ["inches", "in"],
  ['"', "in"],
  ["ohm", "Ω"],
  ["\u2126", "Ω"],
  ["\u03a9", "Ω"],
  ["\u00b5A", "µA"],
  ["\u03bcA", "µA"],
  ["mbar", "hPa"],
  ["% RH", "%"],
  ["ma", "mA"],
  ["VDC", "V"],
  ["V dc", "V"],
  ["in.", "in"],
])("%s is %s", (written, symbol) => {
  expect(unitOf(written)).toBe(symbol);
});

test.each(["Mm", "MA", "furlong", "", "constructor", "__proto__"])("%j is no unit", (written) => {
  expect(unitOf(written)).toBeUndefined();
});

// Factors by definition: 1 in = 25.4 mm and 1 ft = 304.8 mm (international yard and pound agreement, 1959);
// K and °C differ by 273.15 (SI Brochure, 9th edition, 2.3.1); π rad = 180°.
test.each<[UnitSymbol, number, number]>([
  ["in", 25.4, 0],
  ["ft", 304.8, 0],
  ["K", 1, -273.15],
  ["rad", 57.29577951308232, 0],
  ["°F", 0.5555555555555556, -17.77777777777778],
])("%s has the factor %d and the offset %d", (symbol, factor, offset) => {
  // One unit in the last place: the quotients of the table are rounded once.
  expect(Math.abs(unitTable[symbol].factor - factor)).toBeLessThanOrEqual(Number.EPSILON * factor);
  expect(Math.abs(unitTable[symbol].offset - offset)).toBeLessThanOrEqual(Number.EPSILON * Math.abs(offset));
});

test("each kind has a base unit with the factor 1 and the offset 0", () => {
  const kinds = new Set(symbols.map((symbol) => unitTable[symbol].kind));
  for (const kind of kinds) {
    const bases = symbols.map((symbol) => unitTable[symbol]).filter((one) => one.kind === kind);
    expect(bases.some(({ factor, offset }) => factor === 1 && offset === 0)).toBe(true);
  }
});
