import { expect, test } from "vitest";
import { leakageAcrossLoop, offsetOfCard, shuntOrGainOff } from "../../../src/verdict/causes/wiring-causes.ts";
import { findingsOf, idsOf, nothingWrong, planted } from "./planted.ts";

const wiringCauses = [leakageAcrossLoop, offsetOfCard, shuntOrGainOff];

const card = { hasCard: true };

test("10 kΩ across a shunt of 250 Ω takes 2.44 % of the signal in the wiring", () => {
  const [finding] = findingsOf(wiringCauses, planted({ signalAtCard: (signal) => (signal * 10_000) / 10_250 }, card));
  expect(finding).toMatchObject({ id: "shunt-or-gain-off", stage: "wiring" });
  const error = (name: string) => finding?.evidence.find((one) => one.name === name)?.value ?? 0;
  // −0.61 % at 4 mA and −3.05 % at 20 mA; a milliamp is read to 0.001, 0.006 % of span.
  expect(Math.abs(error("error at 4 mA") + 0.61)).toBeLessThan(0.01);
  expect(Math.abs(error("error at 20 mA") + 3.05)).toBeLessThan(0.01);
});

test("a constant difference is an offset; a leakage across two wires is greater at the low end", () => {
  expect(idsOf(wiringCauses, planted({ signalAtCard: (signal) => signal + 0.3 }, card))).toEqual(["offset-of-card"]);
  const leaked = { signalAtCard: (signal: number) => signal + (24 - 0.3 * signal) / 50 };
  expect(idsOf(wiringCauses, planted(leaked, { ...card, instrument: { loopPowered: true } }))).toEqual([
    "leakage-across-loop",
  ]);
});

test("nothing is found where the signal is the same at both ends, or was read at one", () => {
  expect(idsOf(wiringCauses, planted(nothingWrong, card))).toEqual([]);
  const unread = findingsOf(wiringCauses, planted({ signalAtCard: (signal) => signal + 0.3 }));
  expect(unread.filter(({ stage }) => stage === "wiring")).toEqual([]);
});
