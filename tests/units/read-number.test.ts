import fc from "fast-check";
import { expect, test } from "vitest";
import { type DecimalMark, readNumber } from "../../src/units/read-number.ts";
import { writeFixed, writeSigned, writeSignificant } from "../../src/units/write-number.ts";

const seed = 20261125;

// text, decimal mark, value, unit, decimals: what spreadsheets of several countries save.
const accepted: readonly [string, DecimalMark, number, string | null, number][] = [
  ["12.02", "point", 12.02, null, 2],
  ["10.020", "point", 10.02, null, 3],
  ["12,02 mA", "comma", 12.02, "mA", 2],
  ["12.02mA", "point", 12.02, "mA", 2],
  ["  7 ", "point", 7, null, 0],
  ["7.", "point", 7, null, 0],
  [".5", "point", 0.5, null, 1],
  ["−0.5", "point", -0.5, null, 1],
  ["–0.5", "point", -0.5, null, 1],
  ["- 0.5", "point", -0.5, null, 1],
  ["+0.5", "point", 0.5, null, 1],
  ["±0.5 %", "point", 0.5, "%", 1],
  ["1 234,50 mm", "comma", 1234.5, "mm", 2],
  ["1\u00a0234.5", "point", 1234.5, null, 1],
  ["1\u202f234\u202f567", "point", 1234567, null, 0],
  ["1’234.5", "point", 1234.5, null, 1],
  ["0.123 456", "point", 0.123456, null, 6],
  ["1,50E+03", "comma", 1500, null, 0],
  ["1.5e-3", "point", 0.0015, null, 4],
  ["12.5\u00a0°C", "point", 12.5, "°C", 1],
];

// Rules are divided into halves down to sixty-fourths of an inch.
test.each([
  ["4 1/2 in", 4.5, "in", 1, 0.5],
  ['1/2"', 0.5, '"', 1, 0.5],
  ["4-1/2 inches", 4.5, "inches", 1, 0.5],
  ["12 3/16 in.", 12.1875, "in", 4, 0.0625],
  ["-1/8 in", -0.125, "in", 3, 0.125],
  ['4½"', 4.5, '"', 1, 0.5],
  ["¾ ft", 0.75, "ft", 2, 0.25],
])("%j is %d %s, with %i decimals and a step of %d", (text, value, unit, decimals, step) => {
  for (const mark of ["point", "comma"] as const)
    expect(readNumber(text, mark)).toEqual({ value, unit, decimals, step });
});

test.each(["1/2", "4 1/2", "4 1/2 mm", "3/2 in", "1/3 in", "4/0 in"])(
  "%j is no fraction of an inch or a foot",
  (text) => {
    expect(readNumber(text, "point")).toBeUndefined();
  },
);

test.each(accepted)("%j with a decimal %s is %d %s with %d decimals", (text, mark, value, unit, decimals) => {
  expect(readNumber(text, mark)).toEqual({ value, unit, decimals });
});

// Two meanings, or none: nothing of this may become a number.
const refused: readonly [string, DecimalMark][] = [
  ["1,234", "point"],
  ["1.234", "comma"],
  ["1,234,567", "point"],
  ["1,234,567", "comma"],
  ["1.234,5", "point"],
  ["1.234,5", "comma"],
  ["1.234.5", "point"],
  ["12 34", "point"],
  ["1 2345", "point"],
  ["1234 567", "point"],
  ["1.5 200", "point"],
  ["12.o2", "point"],
  ["", "point"],
  ["-", "point"],
  [".", "point"],
  ["mm", "point"],
  ["NaN", "point"],
  ["Infinity", "point"],
  ["1e999", "point"],
  ["7.mm", "point"],
  ["1--2", "point"],
  ["12/01", "point"],
  ["8-Jan", "point"],
  ["14:05", "point"],
];

test.each(refused)("%j with a decimal %s is no number", (text, mark) => {
  expect(readNumber(text, mark)).toBeUndefined();
});

test.each([["0x10", "x10"]])(
  "what stands behind the digits of %j is taken for a unit, %j, which no table knows",
  (text, unit) => {
    expect(readNumber(text, "point")?.unit).toBe(unit);
  },
);

test("a number that was written is read as the same number", () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 0, max: 12 }), (value, decimals) => {
      const written = writeFixed(value, decimals);
      const read = readNumber(written, "point");
      expect(read?.decimals).toBe(decimals);
      expect(writeFixed(read?.value ?? Number.NaN, decimals)).toBe(written);
      expect(Math.abs(read?.value ?? Number.NaN)).toBe(Number(Math.abs(value).toFixed(decimals)));
    }),
    { seed },
  );
});

test("17 significant digits bring every double back exactly, whatever its sign is written with", () => {
  fc.assert(
    fc.property(fc.double({ min: -1e15, max: 1e15, noNaN: true }), (value) => {
      fc.pre(Math.abs(value) > 1e-12);
      expect(readNumber(writeSignificant(value, 17), "point")?.value).toBe(value);
      expect(readNumber(writeSignificant(value, 17).replace(".", ","), "comma")?.value).toBe(value);
    }),
    { seed },
  );
});

test("a signed number and one in the shortest form are read back", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(readNumber(String(value), "point")?.value).toBe(value === 0 ? Number(String(value)) : value);
      fc.pre(Math.abs(value) < 1e15);
      expect(readNumber(writeSigned(value, 3), "point")?.value).toBe(Number(value.toFixed(3)) + 0);
    }),
    { seed },
  );
});

test("the short way for plain numbers gives what the long way gives", () => {
  fc.assert(
    fc.property(fc.stringMatching(/^-?\d{1,15}(\.\d{1,15})?$/u), (text) => {
      // A sign of plus or a space keeps a text from the short way; U+2212 does so for negative numbers.
      const long = text.startsWith("-") ? text.replace("-", "−") : `+${text}`;
      expect(readNumber(text, "point")).toEqual(readNumber(long, "point"));
    }),
    { seed },
  );
});
