import { expect, test } from "vitest";
import { tellContradictions } from "../../../src/assembly/plausibility/tell-contradictions.ts";
import type { Instrument } from "../../../src/model/instrument.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";

function told(changes: Partial<Instrument>): readonly string[] {
  const row: Instrument = {
    ...({ tag: "LT-1", rangeLower: 200, rangeUpper: 1200, distanceUnit: "mm" } as const),
    ...({ signalLower: 4, signalUpper: 20, signalUnit: "mA" } as const),
    ...({ tolerance: 0.5, toleranceBasis: "percent of span" } as const),
    ...changes,
  };
  const problems = new ProblemList();
  tellContradictions({ row, file: "instruments.csv", line: 2, cells: {} }, problems);
  return problems.all.map(({ code }) => code);
}

// By Ohm's law: 12 V of 24 V are left for the burden, and 21 mA (NAMUR NE 43) through it make 571.4 Ω.
test.each([
  ["a loop of 650 Ω", { cardResistance: 250, barrierResistance: 400 }, ["plausible/burden-too-great"]],
  ["a card alone of 600 Ω", { cardResistance: 600 }, ["plausible/burden-too-great"]],
  ["a loop of 570 Ω", { cardResistance: 250, barrierResistance: 320 }, []],
  [
    "the same with 100 m of 0.5 mm²",
    { cardResistance: 250, barrierResistance: 320, cableLength: 100, cableSection: 0.5 },
    ["plausible/burden-too-great"],
  ],
  ["no card stated", { barrierResistance: 900 }, []],
])("of a two-wire sensor of 12 V at 24 V: %s", (_, changes, expected) => {
  expect(told({ loopPowered: true, supplyVoltage: 24, supplyMin: 12, ...changes })).toEqual(expected);
});

test("a current output has its greatest load, a voltage output its least", () => {
  expect(told({ loadMax: 500, cardResistance: 500 })).toEqual([]);
  expect(told({ loadMax: 500, cardResistance: 501 })).toEqual(["plausible/burden-too-great"]);
  const volts = { signalUnit: "V", signalLower: 0, signalUpper: 10 } as const;
  expect(told({ ...volts, loadMin: 2000, cardResistance: 500 })).toEqual(["plausible/load-too-small"]);
  expect(told({ ...volts, loadMin: 2000, cardResistance: 2000 })).toEqual([]);
  expect(told({ ...volts, loadMax: 500, cardResistance: 10_000 })).toEqual([]);
});

test("a supply lies between what the sensor takes", () => {
  expect(told({ supplyVoltage: 24, supplyMin: 12, supplyMax: 30 })).toEqual([]);
  expect(told({ supplyVoltage: 9, supplyMin: 12 })).toEqual(["plausible/supply-outside"]);
  expect(told({ supplyVoltage: 48, supplyMax: 30 })).toEqual(["plausible/supply-outside"]);
});

test("a range begins beyond the blind zone, or where it ends", () => {
  expect(told({ blindZone: 200 })).toEqual([]);
  expect(told({ blindZone: 200.1 })).toEqual(["plausible/range-in-blind-zone"]);
});
