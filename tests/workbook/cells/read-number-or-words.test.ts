import { expect, test } from "vitest";
import { isQuantity, readNumberOrWords } from "../../../src/workbook/cells/read-number-or-words.ts";

test.each([
  ["23.8", "V", 23.8],
  ["23.8 V", "V", 23.8],
  ["0.5 kΩ", "Ω", 500],
  ["−2", "counts", -2],
  ["27645 counts", "counts", 27_645],
  ["earthed at the card", undefined, "earthed at the card"],
  ["2 of 3 cores", undefined, "2 of 3 cores"],
  ["12,5", "V", "12,5"],
])("%j with the unit %j is %j", (text, unit, value) => {
  expect(readNumberOrWords(text, "point", unit)).toEqual({ value });
});

test("a number with a decimal comma is one in a file that has them", () => {
  expect(readNumberOrWords("12,5 V", "comma", "V")).toEqual({ value: 12.5 });
});

test.each([
  ["23.8 V", undefined, "tables/cell-unit-unknown"],
  ["23.8 V", "Ω", "tables/cell-unit-kind"],
  ["23.8 V", "counts", "tables/cell-unit-kind"],
  ["1e300", "V", "tables/cell-out-of-bounds"],
  ["1e300 A", "mA", "tables/cell-out-of-bounds"],
])("%j with the unit %j is refused: %s", (text, unit, code) => {
  expect(readNumberOrWords(text, "point", unit)).toMatchObject({ code });
});

test("only a number alone or with a known unit votes for the decimal mark of its file", () => {
  expect(["12,5", "12,5 V"].every((text) => isQuantity(text, "comma"))).toBe(true);
  expect(["7,5 threads", "2. channel", "pin 1, pin 3"].some((text) => isQuantity(text, "comma"))).toBe(false);
  expect(isQuantity("2. channel", "point")).toBe(false);
});
