import { expect, test } from "vitest";
import { readTolerance, toleranceForms, toleranceValues } from "../../../src/workbook/cells/read-tolerance.ts";

const millimetres = { distanceUnit: "mm", signalUnit: "mA" } as const;
const values = (text: string, units: Parameters<typeof toleranceValues>[1] = millimetres) => {
  const read = readTolerance(text, "point");
  return read && toleranceValues(read, units);
};

const span = (tolerance: number) => ({ tolerance, toleranceBasis: "percent of span" });
const reading = (tolerance: number) => ({ tolerance, toleranceBasis: "percent of reading" });
const distance = (tolerance: number) => ({ tolerance, toleranceBasis: "distance" });

// How data sheets, procedures and people write one term.
test.each([
  ["±0.5 % of span", span(0.5)],
  ["0.5% span", span(0.5)],
  ["0.5%span", span(0.5)],
  ["+/- 0.5 % of the span", span(0.5)],
  ["+/-0.5%FS", span(0.5)],
  ["0.5 % FS", span(0.5)],
  ["0.5 % F.S.", span(0.5)],
  ["0.25 % of full scale", span(0.25)],
  ["1 percent of range", span(1)],
  ["0.5 % reading", reading(0.5)],
  ["0.5 % of reading", reading(0.5)],
  ["±0.1 % rdg", reading(0.1)],
  ["0.1 % of rdg.", reading(0.1)],
  ["0.1 % of measured value", reading(0.1)],
  ["±2 mm", distance(2)],
  ["2mm", distance(2)],
  ["0.2 cm", distance(2)],
  ["1/2 in", undefined],
  ["0.05 mA", { tolerance: 0.05, toleranceBasis: "signal" }],
  ["±50 µA", { tolerance: 0.05, toleranceBasis: "signal" }],
])("%s", (text, expected) => {
  expect(values(text)).toEqual(expected);
});

test.each([
  ["+3/−5 mm", { ...distance(3), toleranceMinus: 5 }],
  ["-5/+3 mm", { ...distance(3), toleranceMinus: 5 }],
  ["+3 mm / -5 mm", { ...distance(3), toleranceMinus: 5 }],
  ["+3 -5 mm", { ...distance(3), toleranceMinus: 5 }],
  ["−0.3 / +0.5 % of span", { ...span(0.5), toleranceMinus: 0.3 }],
])("two sides: %s", (text, expected) => {
  expect(values(text)).toEqual(expected);
});

const fiveMore = { secondTolerance: 5, secondToleranceBasis: "distance" };
test.each([
  ["0.5 % of reading + 5 mm", { ...reading(0.5), ...fiveMore }],
  ["±(0.5 % of reading + 5 mm)", { ...reading(0.5), ...fiveMore }],
  ["±0.5 % of reading ±5 mm", { ...reading(0.5), ...fiveMore }],
  ["0.5 % of reading plus 5 mm", { ...reading(0.5), ...fiveMore }],
  ["±0.5 % of reading and ±5 mm, added", { ...reading(0.5), ...fiveMore }],
  ["±0.5 % of reading or 5 mm, whichever is greater", { ...reading(0.5), ...fiveMore, toleranceCombined: "greater" }],
  [
    "±0.5 % of reading or ±5 mm, whichever is the larger",
    { ...reading(0.5), ...fiveMore, toleranceCombined: "greater" },
  ],
  ["0.5 % of reading or 5 mm whichever is less", { ...reading(0.5), ...fiveMore, toleranceCombined: "less" }],
  ["0.5 % of reading or 5 mm, whichever is smaller.", { ...reading(0.5), ...fiveMore, toleranceCombined: "less" }],
  ["the greater of 0.5 % of reading and 5 mm", { ...reading(0.5), ...fiveMore, toleranceCombined: "greater" }],
  ["max(0.5 % of reading, 5 mm)", { ...reading(0.5), ...fiveMore, toleranceCombined: "greater" }],
  ["min(0.5 % of reading; 5 mm)", { ...reading(0.5), ...fiveMore, toleranceCombined: "less" }],
])("two terms: %s", (text, expected) => {
  expect(values(text)).toEqual(expected);
});

test.each([
  "0.5 %",
  "5",
  "0.5 % of reading or 5 mm",
  "0.5 % of reading and 5 mm",
  "1 % span + 1 mm + 1 mA",
  "-0.5 % span",
  "+3/+5 mm",
  "+3 mm/-5 mA",
  "0 mm",
  "1 °C",
  "small",
  "5 mm, whichever is greater",
  "0,5 % of span",
  "",
])("%j cannot be understood, or in two ways", (text) => {
  expect(values(text)).toBeUndefined();
});

test("the decimal mark is that of the file", () => {
  expect(readTolerance("±0,5 % of span", "comma")?.first.plus).toBe(0.5);
  expect(readTolerance("max(0,5 % of reading; 5,5 mm)", "comma")).toMatchObject({
    ...{ first: { plus: 0.5 }, second: { plus: 5.5 }, combined: "greater" },
  });
});

test("each term is in the units of its loop, and one of another kind is none of it", () => {
  expect(
    values("0.5 % of reading or 5 mm, whichever is greater", { distanceUnit: "m", signalUnit: "mA" }),
  ).toMatchObject({
    secondTolerance: 0.005,
  });
  expect(values("0.1 in")?.tolerance).toBeCloseTo(2.54, 12);
  expect(values("0.05 V")).toBeUndefined();
  expect(values("2 mm", {})).toBeUndefined();
});

test("the forms that a message names are themselves understood", () => {
  const [last = "", ...others] = toleranceForms.split(/, (?!whichever)/u).reverse();
  for (const form of [...others, last.replace(/^or /u, "")]) expect(readTolerance(form, "point"), form).toBeDefined();
});
