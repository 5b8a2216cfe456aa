import { expect, test } from "vitest";
import { type ToleranceTerm, toleranceAt } from "../../../src/analysis/readings/tolerance.ts";

const line = Object.freeze({ rangeLower: 200, rangeUpper: 2000, outputAtLower: 4, outputAtUpper: 20 });
const term = (basis: ToleranceTerm["basis"], plus: number, minus = plus): ToleranceTerm =>
  Object.freeze({ basis, plus, minus });

const joined = (plus: number, minus: number, combined: "greater" | "less"): ToleranceTerm =>
  Object.freeze({ ...term("distance", plus, minus), combined });

test("0.5 % of a span of 1800 is 9, up and down", () => {
  expect(toleranceAt([term("percent of span", 0.5)], line, 300)).toEqual({ low: -9, high: 9 });
});

test.each([
  ["percent of reading, of the reference there", [term("percent of reading", 1)], { low: -3, high: 3 }],
  ["a distance as it is", [term("distance", 2)], { low: -2, high: 2 }],
  ["a signal by the slope of the line", [term("signal", 0.16)], { low: -18, high: 18 }],
  ["two sides that differ", [term("distance", 2, 5)], { low: -5, high: 2 }],
  ["a sum of two", [term("percent of span", 0.5), term("percent of reading", 1)], { low: -12, high: 12 }],
  ["a sum with one side that differs", [term("distance", 1, 2), term("signal", 0.16)], { low: -20, high: 19 }],
  ["the greater of two", [term("percent of reading", 1), joined(5, 5, "greater")], { low: -5, high: 5 }],
  ["the less of two", [term("percent of reading", 1), joined(5, 5, "less")], { low: -3, high: 3 }],
  ["the greater on each side by itself", [term("distance", 4, 2), joined(3, 3, "greater")], { low: -3, high: 4 }],
  ["no term", [], { low: 0, high: 0 }],
])("%s", (_, terms, limits) => {
  expect(toleranceAt(Object.freeze(terms), line, 300)).toEqual(limits);
});

test("percent of reading is nothing at a reference of zero and has no sign below it", () => {
  const zeroed = Object.freeze({ ...line, rangeLower: -100 });
  expect(toleranceAt([term("percent of reading", 1)], zeroed, 0)).toEqual({ low: 0, high: 0 });
  expect(toleranceAt([term("percent of reading", 1)], zeroed, -100)).toEqual({ low: -1, high: 1 });
});

test("a reverse-acting loop has the tolerance of the direct one", () => {
  const reverse = Object.freeze({ ...line, outputAtLower: 20, outputAtUpper: 4 });
  expect(toleranceAt([term("signal", 0.16, 0.32)], reverse, 300)).toEqual({ low: -36, high: 18 });
});
