import { expect, test } from "vitest";
import { causes } from "../../../src/verdict/causes/causes.ts";
import { leakageAcrossLoop, offsetOfCard, shuntOrGainOff } from "../../../src/verdict/causes/wiring-causes.ts";
import { signalKinds } from "../../computed/faults/faulty-loop.ts";
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

test("two meters, or one at two places, may be off: that is never excluded between the two terminals", () => {
  for (const factor of [0.98, 1.02]) {
    const [finding] = findingsOf([...causes], planted({ signalAtCard: (signal) => signal * factor }, card));
    expect(finding?.id).toBe(factor < 1 ? "shunt-or-gain-off" : "signal-changed");
    expect(finding?.rivals.map(({ id }) => id)).toContain("meter-off");
  }
});

test("a voltage loop has no shunt: what is lost in proportion is divided on its way, or a gain of the card", () => {
  const volts = { kind: signalKinds["1–5"] };
  const only = (evidence: ReturnType<typeof planted>) => {
    const [finding, ...others] = findingsOf([...causes], evidence);
    expect(others).toEqual([]);
    expect(`${finding?.title} ${finding?.says} ${finding?.separatedBy}`).not.toContain("shunt");
    return [finding?.id, ...(finding?.rivals.map(({ id }) => id) ?? [])];
  };
  const lost = { signalAtCard: (signal: number) => 0.98 * signal };
  expect(only(planted(lost, { ...volts, hasCard: true }))).toEqual(["voltage-divided", "meter-off"]);
  const inCounts = (gain: number, changes: Parameters<typeof planted>[1]) =>
    only(planted({ counts: (part) => gain * (part + 0.25) - 0.25 }, { hasCounts: true, ...changes }));
  expect(inCounts(0.98, volts)).toEqual(["voltage-divided", "range-of-card-wrong", "counts-row-wrong"]);
  expect(inCounts(1.02, volts)).toEqual(["range-of-card-wrong", "counts-row-wrong"]);
  // Read at the card's own terminals the wire is no part of it.
  expect(inCounts(0.98, { ...volts, hasCard: true })).toEqual(["range-of-card-wrong", "counts-row-wrong"]);
});

test("nothing is found where the signal is the same at both ends, or was read at one", () => {
  expect(idsOf(wiringCauses, planted(nothingWrong, card))).toEqual([]);
  const unread = findingsOf(wiringCauses, planted({ signalAtCard: (signal) => signal + 0.3 }));
  expect(unread.filter(({ stage }) => stage === "wiring")).toEqual([]);
});
