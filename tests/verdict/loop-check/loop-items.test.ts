import { expect, expectTypeOf, test } from "vitest";
import type { Instrument, Output } from "../../../src/model/instrument.ts";
import {
  type AppliedKey,
  applicableItems,
  foldedKey,
  keyOfOutput,
  type LoopItemKey,
  listedKey,
  loopItems,
} from "../../../src/verdict/loop-check/loop-items.ts";

const voltageLoop: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 1,
  distanceUnit: "m",
  signalLower: 0,
  signalUpper: 10,
  signalUnit: "V",
  tolerance: 1,
  toleranceBasis: "percent of span",
});
const currentLoop: Instrument = { ...voltageLoop, signalLower: 4, signalUpper: 20, signalUnit: "mA" };
const keysOf = (instrument: Instrument, outputs: readonly Output[] = []) =>
  applicableItems(instrument, outputs).map(({ key }) => key);

test("the list goes from 1 to 34 without a gap, and no key stands there twice", () => {
  expect([...new Set(loopItems.map(({ number }) => number))]).toEqual(Array.from({ length: 34 }, (_, at) => at + 1));
  const keys = loopItems.map(({ key }) => foldedKey(key));
  expect(new Set(keys).size).toBe(keys.length);
});

test("every item says what to do, what to write down and what is accepted", () => {
  for (const { key, look, record, accepted } of loopItems) {
    for (const text of [key, look, record, accepted]) expect(text, key).toMatch(/^\S.*[^.\s]$/u);
  }
});

test("a current has a burden and fault thresholds, a voltage a load", () => {
  expect(keysOf(currentLoop)).toEqual(
    expect.arrayContaining(["burden", "low fault threshold", "high fault threshold"]),
  );
  expect(keysOf(currentLoop)).not.toContain("load of the voltage output");
  expect(keysOf(voltageLoop)).toContain("load of the voltage output");
  for (const key of ["burden", "low fault threshold", "high fault threshold"]) {
    expect(keysOf(voltageLoop)).not.toContain(key);
  }
  expect(keysOf({ ...currentLoop, faultHigh: 22 })).toContain("low fault threshold");
  expect(keysOf({ ...voltageLoop, faultHigh: 10.5 })).not.toContain("low fault threshold");
});

test("counts and controller values are asked for where the instrument scales them", () => {
  const counted = keysOf({ ...currentLoop, countsLower: 0, countsUpper: 27_648 });
  expect(counted).toEqual(expect.arrayContaining(["counts at 0 %", "counts at 100 %"]));
  expect(counted).not.toContain("scaling");
  expect(keysOf({ ...currentLoop, valueLower: 0, valueUpper: 100 })).toEqual(
    expect.arrayContaining(["scaling", "end to end"]),
  );
});

test("the items of a tag are counted from 1 without a gap, whatever does not apply to it", () => {
  for (const [instrument, outputs] of [
    [voltageLoop, []],
    [currentLoop, [{ tag: "LT-1", output: "Q1", setPoint: 0.2 }]],
    [{ ...currentLoop, principle: "inductive", countsLower: 0, countsUpper: 4000 }, []],
  ] as const) {
    const numbers = [...new Set(applicableItems(instrument, outputs).map(({ number }) => number))];
    expect(numbers).toEqual(numbers.map((_, place) => place + 1));
    expect(numbers.length).toBeGreaterThan(20);
  }
});

test("a signal is injected in fifths, to counts, to the value, to display and trend", () => {
  const scaled = keysOf({
    ...currentLoop,
    countsLower: 0,
    countsUpper: 4000,
    valueLower: 0,
    valueUpper: 1,
    valueUnit: "m",
  });
  for (const part of ["0 %", "25 %", "50 %", "75 %", "100 %"] as const) {
    expect(scaled).toEqual(expect.arrayContaining([`counts at ${part}`, `value at ${part}`]));
  }
  expect(scaled).toContain("display and trend");
});

test("an inductive sensor has no beam; a metal target is its alone", () => {
  const inductive = keysOf({ ...voltageLoop, principle: "inductive" });
  for (const key of ["target", "blind zone", "obstructions"]) expect(inductive).not.toContain(key);
  expect(inductive).toContain("target metal");
  for (const principle of ["ultrasonic", "photoelectric", "laser", "radar", "other", undefined] as const) {
    expect(keysOf({ ...voltageLoop, principle })).toEqual(expect.arrayContaining(["target", "blind zone"]));
    expect(keysOf({ ...voltageLoop, principle })).not.toContain("target metal");
  }
});

test("items of outputs stand once for each output, in the units of the instrument", () => {
  const outputs: readonly Output[] = [
    { tag: "LT-1", output: "Q1", setPoint: 0.2 },
    { tag: "LT-1", output: "Q2", setPoint: 0.8 },
  ];
  const items = applicableItems(voltageLoop, outputs);
  const trips = items.filter(({ key }) => key.startsWith("trip point"));
  expect(trips.map(({ key, unit, output }) => [key, unit, output?.setPoint])).toEqual([
    ["trip point of Q1", "m", 0.2],
    ["trip point of Q2", "m", 0.8],
  ]);
  expect(items.length - applicableItems(voltageLoop, []).length).toBe(2 * 7);
  expect(applicableItems(currentLoop, []).find(({ key }) => key === "low fault threshold")?.unit).toBe("mA");
});

test("keys are typed by hand, and the examples of the docblocks", () => {
  expect(foldedKey("Supply at full-output")).toBe(foldedKey("supply at full output"));
  expect(foldedKey("supply")).not.toBe(foldedKey("supply at full output"));
  expect(applicableItems(voltageLoop, [])).toHaveLength(28);
});

test("an item of outputs has a key for each of them, which leads back to the list; one of the user's own does not", () => {
  expect(keyOfOutput("trip point", "Q1")).toBe("trip point of Q1");
  expect(listedKey("trip point of Q1")).toBe("trip point");
  expect(listedKey("burden")).toBe("burden");
  expect(listedKey("trip point")).toBeUndefined();
  expect(listedKey("simulated 20 mA")).toBeUndefined();
});

test("a misspelt key of an item is no key to the compiler", () => {
  expectTypeOf<"burden">().toExtend<LoopItemKey>();
  expectTypeOf<"burdn">().not.toExtend<LoopItemKey>();
  expectTypeOf<"trip point of Q1">().toExtend<AppliedKey>();
  expectTypeOf<"trip point">().not.toExtend<AppliedKey>();
  expectTypeOf<string>().not.toExtend<AppliedKey>();
});
