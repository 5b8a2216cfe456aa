import { expect, test } from "vitest";
import { wiringCauses } from "../../../src/verdict/causes/wiring-causes.ts";
import { nothingWrong, planted, rowsOf } from "./planted.ts";

const card = { hasCard: true };

test("10 kΩ across a shunt of 250 Ω takes 2.44 % of the signal: row 11 in the wiring", () => {
  const [finding] = wiringCauses(planted({ signalAtCard: (signal) => (signal * 10_000) / 10_250 }, card));
  expect(finding).toMatchObject({ row: 11, stage: "wiring" });
  const error = (name: string) => finding?.evidence.find((one) => one.name === name)?.value ?? 0;
  // −0.61 % at 4 mA and −3.05 % at 20 mA; a milliamp is read to 0.001, 0.006 % of span.
  expect(Math.abs(error("error at 4 mA") + 0.61)).toBeLessThan(0.01);
  expect(Math.abs(error("error at 20 mA") + 3.05)).toBeLessThan(0.01);
});

test("a constant difference is row 9, a leakage across two wires row 12", () => {
  expect(rowsOf(wiringCauses, planted({ signalAtCard: (signal) => signal + 0.3 }, card))).toEqual([9]);
  const leaked = { signalAtCard: (signal: number) => signal + (24 - 0.3 * signal) / 50 };
  expect(rowsOf(wiringCauses, planted(leaked, { ...card, instrument: { loopPowered: true } }))).toEqual([12]);
});

test("nothing is found where the signal is the same at both ends, or was read at one", () => {
  expect(rowsOf(wiringCauses, planted(nothingWrong, card))).toEqual([]);
  expect(rowsOf(wiringCauses, planted({ signalAtCard: (signal) => signal + 0.3 }))).toEqual([]);
});
