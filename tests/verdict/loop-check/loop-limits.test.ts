import { expect, test } from "vitest";
import type { Calibration } from "../../../src/model/calibration.ts";
import type { Instrument, Output } from "../../../src/model/instrument.ts";
import type { AppliedKey } from "../../../src/verdict/loop-check/loop-items.ts";
import { loopLimits } from "../../../src/verdict/loop-check/loop-limits.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 300,
  rangeUpper: 3000,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 0.5,
  toleranceBasis: "percent of span",
});
const calibration: Calibration = Object.freeze({ calibration: "C-1", tag: "LT-1" });
const limitOf = (
  key: AppliedKey,
  more: Partial<Instrument>,
  work: Partial<Calibration> = {},
  outputs: readonly Output[] = [],
) => loopLimits({ instrument: { ...instrument, ...more }, calibration: { ...calibration, ...work }, outputs }).get(key);
const output: Output = Object.freeze({ tag: "LT-1", output: "Q1", setPoint: 420 });

test("an item that the rows say nothing of has no limit", () => {
  const known = [...loopLimits({ instrument, calibration, outputs: [output] }).keys()];
  expect(known).toEqual(["low fault threshold", "high fault threshold", "blind zone", "drives running"]);
});

test("fault thresholds of 4 to 20 mA lie between failure and measurement of NAMUR NE 43", () => {
  expect(limitOf("low fault threshold", {})).toMatchObject({ low: 3.6, high: 3.8 });
  expect(limitOf("high fault threshold", {})).toMatchObject({ low: 20.5, high: 21 });
  expect(limitOf("low fault threshold", { faultLow: 3.5, faultHigh: 22 })).toMatchObject({ low: 3.5, high: 4 });
  expect(limitOf("high fault threshold", { faultLow: 3.5, faultHigh: 22 })).toMatchObject({ low: 20, high: 22 });
  expect(limitOf("low fault threshold", { signalLower: 0, signalUpper: 20 })).toBeUndefined();
  // One that is stated leaves the other as it is.
  expect(limitOf("low fault threshold", { faultHigh: 22 })).toMatchObject({
    low: 3.6,
    high: 3.8,
    basis: "NAMUR NE 43",
  });
  expect(limitOf("high fault threshold", { faultHigh: 22 })).toMatchObject({ low: 20, high: 22 });
});

test("the supply is held to the sensor's, the number of wires to whether it lives on its loop", () => {
  const supply = { supplyMin: 12, supplyMax: 30 };
  expect(limitOf("supply without load", supply)).toMatchObject({ low: 12, high: 30 });
  expect(limitOf("supply at full output", supply)).toMatchObject({ low: 12, high: 30 });
  expect(limitOf("number of wires", { loopPowered: true })).toMatchObject({ low: 2, high: 2 });
  expect(limitOf("number of wires", { loopPowered: false })).toMatchObject({ low: 3, high: undefined });
});

test("the burden of the worked example, 250 Ω and 12 V, fits a supply of 24 V and not one of 17 V", () => {
  const loop = { loopPowered: true, supplyMin: 12, cardResistance: 250, cableLength: 0, cableSection: 0.5 } as const;
  expect(limitOf("burden", { ...loop, supplyVoltage: 24 })).toMatchObject({ high: 12 / 0.021, computed: 250 });
  // 5 V / 21 mA = 238 Ω.
  expect(limitOf("burden", { ...loop, supplyVoltage: 17 })?.high).toBeLessThan(250);
  // 6 V / 22.5 mA is 267 Ω.
  expect(limitOf("burden", { ...loop, supplyVoltage: 18, faultHigh: 22.5 })).toMatchObject({
    high: 6 / 0.0225,
    basis: "(supply_voltage − supply_min) / 22.5 mA",
  });
  expect(limitOf("burden", { loadMax: 500 })).toMatchObject({ high: 500, computed: undefined, basis: "load_max" });
});

test("a voltage output drives no less than its least load", () => {
  expect(limitOf("load of the voltage output", { loadMin: 2000, cardResistance: 100_000 })).toMatchObject({
    low: 2000,
    computed: 100_000,
  });
});

test("counts are held to the loop's whole tolerance, also where they fall", () => {
  // 0.5 % of 27 648 counts is 138.24.
  const rising = limitOf("counts at 100 %", { countsLower: 0, countsUpper: 27_648 });
  expect(Math.abs((rising?.low ?? 0) - 27_509.76)).toBeLessThan(1e-7);
  expect(Math.abs((rising?.high ?? 0) - 27_786.24)).toBeLessThan(1e-7);
  const falling = limitOf("counts at 0 %", { countsLower: 4000, countsUpper: 0, toleranceMinus: 0.25 });
  // 0.5 % above is 20 counts down, 0.25 % below is 10 counts up.
  expect(Math.abs((falling?.low ?? 0) - 3980)).toBeLessThan(1e-9);
  expect(Math.abs((falling?.high ?? 0) - 4010)).toBeLessThan(1e-9);
});

test("an injected signal is held to the line of counts and of the value, within the whole tolerance", () => {
  const scaled = { countsLower: 0, countsUpper: 27_648, valueLower: 10, valueUpper: 30 };
  // 0.5 % of span about three quarters: 20 736 ± 138.24 counts, 25 ± 0.1 of 20.
  const counts = limitOf("counts at 75 %", scaled);
  expect(Math.abs((counts?.low ?? 0) - 20_597.76)).toBeLessThan(1e-7);
  expect(Math.abs((counts?.high ?? 0) - 20_874.24)).toBeLessThan(1e-7);
  const value = limitOf("value at 75 %", scaled);
  expect(Math.abs((value?.low ?? 0) - 24.9)).toBeLessThan(1e-9);
  expect(Math.abs((value?.high ?? 0) - 25.1)).toBeLessThan(1e-9);
});

test("drives move the signal by no more than its tolerance; a step is over in response_max, a load under current_max", () => {
  // 0.5 % of 16 mA.
  expect(limitOf("drives running", {})?.high).toBeCloseTo(0.08, 12);
  expect(limitOf("drives running", {})?.low).toBeCloseTo(-0.08, 12);
  expect(limitOf("response", { responseMax: 2 })).toMatchObject({ high: 2, basis: "response_max" });
  const limits = loopLimits({ instrument, calibration, outputs: [{ ...output, currentMax: 100 }] });
  expect(limits.get("output load of Q1")).toMatchObject({ high: 100 });
});

test("the target is at least as wide as the beam at the far distance, by its smaller side", () => {
  const limit = limitOf("target", { beamAngle: 8 }, { targetWidth: 600, targetHeight: 500 });
  // 2 · 3000 mm · tan 4° = 419.561 mm (tan 4° = 0.0699268).
  expect(Math.abs((limit?.low ?? 0) - 419.561)).toBeLessThan(0.001);
  expect(limit?.computed).toBe(500);
  expect(limitOf("target", { beamAngle: 180 }, { targetWidth: 600 })).toBeUndefined();
});

test("the blind zone ends before the range begins; the air lies between the sensor's limits", () => {
  expect(limitOf("blind zone", { blindZone: 250 })).toEqual({
    high: 300,
    computed: 250,
    basis: "range_lower, blind_zone",
  });
  expect(limitOf("air", { airMin: 5, airMax: 38 }, { airTemperature: 21 })).toMatchObject({
    low: 5,
    high: 38,
    computed: 21,
  });
});

test("an output needs the input of its polarity, and the voltages of IEC 61131-2", () => {
  const npn: Output = { ...output, polarity: "NPN", controllerInput: "sinking", inputType: "3", onVoltage: 10.5 };
  expect(limitOf("sink or source of Q1", {}, {}, [npn])?.finding).toEqual({
    isPass: false,
    says: "an output of kind NPN needs a sourcing input, and this one is sinking",
  });
  expect(limitOf("on-state voltage of Q1", {}, {}, [npn])).toMatchObject({ low: 11, high: 30, computed: 10.5 });
  expect(limitOf("on-state voltage of Q1", {}, {}, [{ ...npn, inputType: "1" }])).toMatchObject({ low: 15 });
  expect(limitOf("off-state voltage of Q1", {}, {}, [npn])).toMatchObject({ low: -3, high: 5 });
  expect(limitOf("trip point of Q1", {}, {}, [{ ...output, setPointTolerance: 15 }])).toMatchObject({
    low: 405,
    high: 435,
  });
});
