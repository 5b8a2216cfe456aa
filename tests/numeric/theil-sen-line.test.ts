import { expect, test } from "vitest";
import { theilSenLine } from "../../src/numeric/theil-sen-line.ts";
import { readColumns } from "../published/read-data.ts";

/** 1e-12 relative: 15 digits of two medians less what the sorting of 630 slopes may add. */
const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

test("one wild point of five does not move the line 1 + 2x", () => {
  expect(theilSenLine(Object.freeze([0, 1, 2, 3, 4]), Object.freeze([1, 3, 5, 7, 100]))).toEqual({
    slope: 2,
    intercept: 1,
  });
});

test("Norris gives slope 1.0021968365553604 and intercept −0.3010984182776848 as in SciPy, equal abscissas among them", () => {
  // scipy.stats.theilslopes(y, x, method="joint"), SciPy 1.17.1, on the data of NIST StRD Norris.
  const { x = [], y = [] } = readColumns("nist-norris");
  const line = theilSenLine(x, y);
  expect(relative(line.slope, 1.0021968365553604)).toBeLessThan(1e-12);
  expect(relative(line.intercept, -0.3010984182776848)).toBeLessThan(1e-12);
  const wild = y.with(3, 8880);
  expect(relative(theilSenLine(x, wild).slope, 1.0021968365553604)).toBeLessThan(1e-12);
});

test("of more than 300 points every k-th is taken, and an exact line stays exact", () => {
  const x = Array.from({ length: 1000 }, (_, index) => index);
  const y = x.map((value) => 3 - value / 2);
  expect(theilSenLine(x, y)).toEqual({ slope: -0.5, intercept: 3 });
});

test("equal abscissas alone determine no line", () => {
  expect(() => theilSenLine([2, 2], [1, 3])).toThrow("all abscissas are equal");
  expect(() => theilSenLine([2], [1])).toThrow(RangeError);
});
