import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { burdenLimit, highestCurrent, loopBurden } from "../../../src/analysis/stages/loop-burden.ts";
import type { Instrument } from "../../../src/model/instrument.ts";

const instrument: Instrument = Object.freeze({
  tag: "LT-1",
  rangeLower: 0,
  rangeUpper: 100,
  distanceUnit: "mm",
  signalLower: 4,
  signalUpper: 20,
  signalUnit: "mA",
  tolerance: 1,
  toleranceBasis: "distance",
});
const wired: Instrument = { ...instrument, cardResistance: 250, cableLength: 100, cableSection: 0.5 };

/** Sums of a few terms. */
const rounding = 1e-12 * 600;

test("card, barrier and a cable of 39.0 Ω/km (IEC 60228, 0.5 mm²) there and back are in series", () => {
  expect(loopBurden({ ...wired, barrierResistance: 28 })).toEqual({
    card: 250,
    barrier: 28,
    cable: { lengthMetres: 100, ohmsPerKilometre: 39, temperatureCelsius: 20, resistance: 7.8 },
    total: 285.8,
  });
});

test("a hot cable and a tinned one have more of it, and a gauge stands in for a cross-section", () => {
  const totalOf = (more: Partial<Instrument>) => (loopBurden({ ...wired, ...more }) as { total: number }).total;
  // 7.8 Ω · (1 + 0.00393 · 30) = 8.71962 Ω.
  expect(Math.abs(totalOf({ cableTemperature: 50 }) - 258.71962)).toBeLessThan(rounding);
  expect(Math.abs(totalOf({ cableConductor: "flexible tinned" }) - 258.02)).toBeLessThan(rounding);
  // Gauge 22: 53 Ω/km in a published table (tests/published/wire-gauges), ± 0.5 for its last digit, times 0.2 km.
  expect(Math.abs(totalOf({ cableSection: undefined, cableAwg: 22 }) - 260.6)).toBeLessThan(0.1);
});

test.each([
  [{ cardResistance: undefined }, "card_resistance is not stated"],
  [{ cableLength: undefined }, "cable_length is not stated"],
  [{ cableSection: undefined }, "neither cable_section nor cable_awg is stated"],
  [{ hazardousArea: true }, "barrier_resistance is not stated, and the loop stands in a hazardous area"],
  [{ cableSection: 0.6 }, "no table value for a flexible core of 0.6 mm²; there are 0.14, 0.25"],
])("what is missing is said, not taken as zero: %j", (less, reason) => {
  expect(loopBurden({ ...wired, ...less })).toHaveProperty("notDetermined", expect.stringContaining(reason));
});

test("no barrier stated counts as none outside a hazardous area, and 0 is an answer inside one", () => {
  expect(loopBurden({ ...wired, hazardousArea: false })).toMatchObject({ barrier: 0, total: 257.8 });
  expect(loopBurden({ ...wired, hazardousArea: true, barrierResistance: 0 })).toMatchObject({ total: 257.8 });
});

test("the lesser of supply and load_max is the limit; a supply counts only for a sensor that lives on its loop", () => {
  const supplied = { ...instrument, supplyVoltage: 24, supplyMin: 12 };
  const limit = burdenLimit({ ...supplied, loopPowered: true, loadMax: 600 });
  expect(limit).toMatchObject({ setBy: "supply" });
  // 12 V / 21 mA = 571.428571… Ω.
  expect(Math.abs((limit as { greatest: number }).greatest - 571.4285714285714)).toBeLessThan(rounding);
  expect(burdenLimit({ ...supplied, loopPowered: true, loadMax: 500 })).toEqual({ greatest: 500, setBy: "load_max" });
  expect(burdenLimit({ ...supplied, loopPowered: false, loadMax: 600 })).toEqual({ greatest: 600, setBy: "load_max" });
  expect(burdenLimit({ ...supplied, loopPowered: false })).toEqual({ notDetermined: "load_max is not stated" });
  expect(burdenLimit({ ...instrument, loopPowered: true })).toHaveProperty("notDetermined");
});

test("the example of the docblock", () => {
  expect(loopBurden({ ...wired, barrierResistance: 0 })).toHaveProperty("total", 257.8);
});

test("the highest current is fault_high, the 21 mA of NAMUR NE 43 where that is empty, or an end of the signal above it", () => {
  const fourToTwenty = { signalLower: 4, signalUpper: 20 };
  expect(highestCurrent(fourToTwenty)).toBe(21);
  expect(highestCurrent({ signalLower: 20, signalUpper: 0 })).toBe(21);
  expect(highestCurrent({ ...fourToTwenty, faultHigh: 22.5 })).toBe(22.5);
  expect(highestCurrent({ ...fourToTwenty, faultHigh: 20.8 })).toBe(20.8);
  expect(highestCurrent({ signalLower: 1, signalUpper: 5 })).toBe(5);
  // 12 V / 22.5 mA = 533.33… Ω.
  const limit = burdenLimit({ ...instrument, supplyVoltage: 24, supplyMin: 12, loopPowered: true, faultHigh: 22.5 });
  expect(isDetermined(limit) && limit.greatest).toBeCloseTo(533.3333333, 6);
});
