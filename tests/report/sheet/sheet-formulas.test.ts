import { expect, test } from "vitest";
import { spanOf } from "../../../src/record/range.ts";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import { indicatedFormula, limitFormula } from "../../../src/report/sheet/sheet-formulas.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { workedFormula } from "../worked-formula.ts";

type Instrument = CalibrationRecord["instrument"];

function record(change: Partial<Instrument>): CalibrationRecord {
  const sample = sampleRecord();
  return { ...sample, instrument: { ...sample.instrument, rangeLower: 200, rangeUpper: 2000, ...change } };
}

test("the span is the range's upper end less its lower", () => {
  expect(spanOf(record({}).instrument)).toBe(1800);
});

/** The distance at the middle of the signal is the middle of the range, whichever way the signal runs. */
test.each<[Partial<Instrument>, string, number]>([
  [{}, "200 + (D − 4) × 1800 ÷ 16", 12],
  [{ signalLower: 20, signalUpper: 4 }, "200 + (D − 20) × 1800 ÷ (−16)", 12],
  [{ signalLower: 0, signalUpper: 10 }, "200 + D × 1800 ÷ 10", 5],
  [{ signalLower: -10, signalUpper: 10 }, "200 + (D + 10) × 1800 ÷ 20", 0],
])("the distance of a signal of %j is %s", (change, formula, middle) => {
  expect(indicatedFormula(record(change), "signal", "D")).toBe(formula);
  expect(workedFormula(formula, new Map([["D", middle]]))).toBe(1100);
});

test("a range from 0 has nothing to add, and one from below 0 adds it", () => {
  expect(indicatedFormula(record({ rangeLower: 0, rangeUpper: 100 }), "signal", "D")).toBe("(D − 4) × 100 ÷ 16");
  const below = indicatedFormula(record({ rangeLower: -50, rangeUpper: 50 }), "signal", "D");
  expect(workedFormula(below, new Map([["D", 12]]))).toBe(0);
});

test("counts and controller values are scaled by their own ends", () => {
  const scaled = record({ countsLower: 0, countsUpper: 27648, valueLower: 100, valueUpper: 0 });
  expect(indicatedFormula(scaled, "counts", "E")).toBe("200 + E × 1800 ÷ 27648");
  expect(indicatedFormula(scaled, "value", "F")).toBe("200 + (F − 100) × 1800 ÷ (−100)");
});

test.each<[Partial<Instrument>, string]>([
  [{ tolerance: 0.5 }, "0.5 % × 1800"],
  [{ tolerance: 0.5, toleranceBasis: "percent of reading" }, "0.5 % × C"],
  [{ tolerance: 2, toleranceBasis: "distance" }, "2"],
  [{ tolerance: 0.05, toleranceBasis: "signal", signalLower: 20, signalUpper: 4 }, "0.05 × 1800 ÷ 16"],
  [{ tolerance: 0.1, secondTolerance: 0.2, secondToleranceBasis: "percent of reading" }, "0.1 % × 1800 + 0.2 % × C"],
])("the tolerance of %j is %s", (change, formula) => {
  expect(limitFormula(record(change), "plus", () => "C")).toBe(formula);
  expect(limitFormula(record(change), "minus", () => "C")).toBe(formula);
});

test("downwards the lower tolerance counts where one is given", () => {
  const uneven = record({ tolerance: 0.5, toleranceMinus: 0.3 });
  expect(limitFormula(uneven, "minus", () => "C")).toBe("0.3 % × 1800");
});
