import { expect, expectTypeOf, test } from "vitest";
import { candidateSchema, type Instrument, instrumentSchema, outputSchema } from "../../src/model/instrument.ts";
import type { toleranceBases } from "../../src/model/instrument-words.ts";
import { unitOf } from "../../src/units/unit-table.ts";

const instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 20,
  signalUpper: 4,
  signalUnit: "mA",
  tolerance: 0.5,
  toleranceBasis: "percent of span",
} as const);

test("nine fields make an instrument, a reverse-acting one too", () => {
  expect(instrumentSchema.parse(instrument)).toEqual(instrument);
});

test("a word that is not among the choices, a number that is none and a stray field are refused", () => {
  expect(instrumentSchema.safeParse({ ...instrument, distanceUnit: "km" }).success).toBe(false);
  expect(instrumentSchema.safeParse({ ...instrument, rangeLower: Number.NaN }).success).toBe(false);
  expect(instrumentSchema.safeParse({ ...instrument, rangeUpper: Number.POSITIVE_INFINITY }).success).toBe(false);
  expect(instrumentSchema.safeParse({ ...instrument, colour: "red" }).success).toBe(false);
  expect(instrumentSchema.safeParse({ ...instrument, tag: "" }).success).toBe(false);
});

test("every unit that an instrument may choose is one of the unit table", () => {
  const units = [...instrumentSchema.shape.distanceUnit.options, ...instrumentSchema.shape.signalUnit.options];
  for (const unit of units) expect(unitOf(unit)).toBe(unit);
});

test("an output and a candidate need little", () => {
  expect(outputSchema.safeParse({ tag: "LT-1", output: "Q1", setPoint: 50 }).success).toBe(true);
  expect(candidateSchema.safeParse({ candidate: "A" }).success).toBe(true);
});

test("the type of an instrument comes from its schema", () => {
  expectTypeOf<Instrument["toleranceBasis"]>().toEqualTypeOf<(typeof toleranceBases)[number]>();
  expectTypeOf<Instrument["serial"]>().toEqualTypeOf<string | undefined>();
});

test("an interval is a whole number of months: half a month would be due on the day of the work", () => {
  expect(instrumentSchema.safeParse({ ...instrument, intervalMonths: 6 }).success).toBe(true);
  expect(instrumentSchema.safeParse({ ...instrument, intervalMonths: 0.5 }).success).toBe(false);
});
