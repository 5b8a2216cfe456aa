import { expect, test } from "vitest";
import { decimalMark, decimalSign, decimalsOf, marked, withDecimalMark } from "../../src/units/decimal-mark.ts";
import { writeFixed, writePlain, writeSigned, writeSignificant } from "../../src/units/write-number.ts";

test("numbers have a comma while a function runs, and a point before and after, also where it throws", () => {
  const written = () => [writeFixed(-0.5, 2), writeSigned(0.25, 1), writePlain(0.1 + 0.2), writeSignificant(1234.5, 5)];
  expect(withDecimalMark("comma", written)).toEqual(["−0,50", "+0,3", "0,3", "1234,5"]);
  expect(written()).toEqual(["−0.50", "+0.3", "0.3", "1234.5"]);
  expect(() =>
    withDecimalMark("comma", () => {
      throw new Error("bad");
    }),
  ).toThrow("bad");
  expect(decimalSign()).toBe(".");
});

test("a number that rounds to zero has no sign, with either mark", () => {
  expect(withDecimalMark("comma", () => [writeSigned(0.001, 2), writeSigned(0.01, 2)])).toEqual(["0,00", "+0,01"]);
  expect([writeSigned(0.001, 2), writeSigned(0.01, 2)]).toEqual(["0.00", "+0.01"]);
});

test("no mark leaves the one around it, an inner one holds inside", () => {
  const inside = withDecimalMark("comma", () => [
    withDecimalMark(undefined, decimalMark),
    withDecimalMark("point", decimalMark),
    decimalMark(),
  ]);
  expect(inside).toEqual(["comma", "point", "comma"]);
});

test("decimal numbers in a text of the program's own are marked; clauses, versions, names and days stay", () => {
  const inComma = (text: string) => withDecimalMark("comma", () => marked(text));
  expect(inComma("w = 1.04 − e^(0.38 · ln(T/U) − 0.54), k is 2 (to 2.05)")).toBe(
    "w = 1,04 − e^(0,38 · ln(T/U) − 0,54), k is 2 (to 2,05)",
  );
  for (const text of ["JCGM 100:2008, 5.2.2", "spanwright 0.3.0", "H.3", "2026-03-17", "IEC 60381-1", "e.g."]) {
    expect(inComma(text)).toBe(text);
  }
  expect(marked("k = 1.96")).toBe("k = 1.96");
});

test.each([
  ["+0,25", 2],
  ["1.5", 1],
  ["12", 0],
  ["", 0],
])("%j has %i decimals", (text, decimals) => {
  expect(decimalsOf(text)).toBe(decimals);
});
