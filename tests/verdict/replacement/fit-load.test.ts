import fc from "fast-check";
import { expect, test } from "vitest";
import type { Candidate } from "../../../src/model/instrument.ts";
import { fitResults } from "../../../src/verdict/replacement/fit-cell.ts";
import { fitLoad } from "../../../src/verdict/replacement/fit-load.ts";
import { candidateWith, loopNeeds, type NeedsChanges, told } from "./sample-loop-needs.ts";

const cell = (more: Partial<Candidate>, instrument: NeedsChanges["instrument"] = {}) =>
  fitLoad(candidateWith(more), loopNeeds({ instrument }));

// 250 Ω of card and 100 m of 0.5 mm² there and back: 2 · 0.1 km · 39 Ω/km = 7.8 Ω (IEC 60228, class 5, 20 °C).
test("257.8 Ω hang on the signal: a load of up to 500 Ω drives them, one of up to 250 Ω does not", () => {
  expect(cell({})).toMatchObject({ result: "fits", needs: "257.8 Ω", offers: "500 Ω at most" });
  expect(told(cell({ loadMax: 250 }))).toBe("does not fit: 257.8 Ω where 250 Ω at most is allowed, by its load_max");
});

test("on two wires the supply decides at 21 mA: (24 − 12) / 0.021 = 571.43 Ω, (24 − 19) / 0.021 = 238.1 Ω", () => {
  expect(cell({ loopPowered: true, loadMax: undefined, supplyMin: 12 })).toMatchObject({
    result: "fits",
    offers: "571.43 Ω at most",
  });
  expect(told(cell({ loopPowered: true, loadMax: undefined, supplyMin: 19 }))).toBe(
    "does not fit: 257.8 Ω where 238.1 Ω at most is allowed, by the supply: (24 V − 19 V) / 21 mA",
  );
});

test("(24 − 18.5) / 0.020 = 275 Ω would do at 20 mA, and 261.9 Ω at 21 mA still; 18.6 V leave 257.14 Ω, too little", () => {
  expect(cell({ loopPowered: true, supplyMin: 18.5 }).result).toBe("fits");
  expect(cell({ loopPowered: true, supplyMin: 18.6 }).result).toBe("does not fit");
});

test.each<[string, Partial<Candidate>, NeedsChanges["instrument"]]>([
  ["card_resistance is not stated", {}, { cardResistance: undefined }],
  ["whether it lives on the loop (loop_powered) is not stated", { loopPowered: undefined }, {}],
  ["load_max is not stated", { loadMax: undefined }, {}],
  ["supply_min is not stated", { loopPowered: true, supplyMin: undefined }, {}],
  ["supply_voltage of the loop is not stated", { loopPowered: true }, { supplyVoltage: undefined }],
  ["its signal is of another kind", { signalUnit: "V" }, {}],
])("cannot be told: %s", (reason, more, instrument) => {
  expect(told(cell(more, instrument))).toBe(`cannot be told: ${reason}`);
});

test("a load_max that is too low rules it out, whatever else is open", () => {
  expect(cell({ loopPowered: undefined, loadMax: 100 }).result).toBe("does not fit");
});

test("a voltage output asks for a card that draws little", () => {
  const volts = { signalUnit: "V", signalLower: 0, signalUpper: 10 } as const;
  const card = (loadMin: number | undefined, cardResistance: number | undefined) =>
    cell({ ...volts, loadMin }, { ...volts, cardResistance });
  expect(card(2000, 20000)).toMatchObject({ result: "fits", needs: "20000 Ω", offers: "2000 Ω or more" });
  expect(told(card(2000, 1000))).toBe("does not fit: 1000 Ω where 2000 Ω or more is allowed");
  expect(told(card(undefined, 1000))).toBe("cannot be told: load_min is not stated");
  expect(told(card(2000, undefined))).toBe("cannot be told: card_resistance of the loop is not stated");
});

test("a greater load_max, or a lower supply_min, never makes it worse", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1000, noNaN: true }),
      fc.double({ min: 0, max: 30, noNaN: true }),
      fc.double({ min: 0, max: 500, noNaN: true }),
      fc.constantFrom(true, false, undefined),
      (loadMax, supplyMin, more, loopPowered) => {
        const rank = (one: Partial<Candidate>) => fitResults.indexOf(cell({ loopPowered, ...one }).result);
        const better = { loadMax: loadMax + more, supplyMin: supplyMin / (1 + more) };
        expect(rank(better)).toBeLessThanOrEqual(rank({ loadMax, supplyMin }));
      },
    ),
    { seed: 20260602, numRuns: 300 },
  );
});
