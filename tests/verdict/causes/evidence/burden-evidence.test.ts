import { expect, test } from "vitest";
import type { Instrument } from "../../../../src/model/instrument.ts";
import {
  burdenLimitedCurrent,
  checkedNumber,
  fullSimulation,
} from "../../../../src/verdict/causes/evidence/burden-evidence.ts";

const check = (item: string, measured: number | string) => ({
  calibration: "C-1",
  item,
  result: "pass" as const,
  measured,
});
const instrument: Instrument = {
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 1,
  distanceUnit: "m",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "percent of span",
  supplyMin: 10,
};

test("18 V, of which the sensor needs 10 V, drive 16 mA through 500 Ω, whoever states them", () => {
  const measured = { instrument, loopChecks: [check("supply_voltage", 18), check("Burden", 500)] };
  expect(burdenLimitedCurrent(measured)?.milliamps).toBe(16);
  const stated = { ...instrument, supplyVoltage: 18, cardResistance: 250, barrierResistance: 250 };
  expect(burdenLimitedCurrent({ instrument: stated, loopChecks: [] })?.milliamps).toBe(16);
  expect(burdenLimitedCurrent({ instrument, loopChecks: [check("burden", 500)] })).toBeUndefined();
});

test("an item is found however it is written, and words are no number", () => {
  expect(fullSimulation({ loopChecks: [check("simulated_20mA", 16.1)] })).toBe(16.1);
  expect(fullSimulation({ loopChecks: [check("Simulated 20 mA", 16.1)] })).toBe(16.1);
  expect(checkedNumber({ loopChecks: [check("burden", "not measured")] }, ["burden"], "Ω")).toBeUndefined();
});

test("a number is taken in the unit of its row, and a row of another kind is passed over", () => {
  const row = (unit: string) => ({ loopChecks: [{ ...check("burden", 0.5), unit }] });
  expect(checkedNumber(row("kΩ"), ["burden"], "Ω")).toBe(500);
  expect(checkedNumber(row("V"), ["burden"], "Ω")).toBeUndefined();
  expect(checkedNumber(row("furlong"), ["burden"], "Ω")).toBeUndefined();
  expect(burdenLimitedCurrent({ instrument: { ...instrument, supplyVoltage: 18 }, ...row("kΩ") })?.milliamps).toBe(16);
});
