import { expect, test } from "vitest";
import { isLeakage, leakageNumbers } from "../../../../src/verdict/causes/evidence/leakage.ts";
import { planted } from "../planted.ts";

/** 50 kΩ across a loop of 24 V and 300 Ω: (24 − 0.3 I)/50 mA beside the sensor. */
const leaked = (signal: number) => signal + (24 - 0.3 * signal) / 50;

test("50 kΩ, 24 V and 300 Ω leak 0.456 mA at 4 mA and 0.36 mA at 20 mA, and would vanish at 80 mA", () => {
  const evidence = planted({ signal: leaked }, { instrument: { loopPowered: true } });
  const stage = evidence.stages[0]!;
  expect(isLeakage(evidence, stage)).toBe(true);
  const [low, high, vanishes] = leakageNumbers(evidence, stage).map(({ value }) => value);
  // Noise of 0.02 % of 16 mA over 44 readings: 0.001 mA at an end; it moves the crossing by about 1 mA.
  expect(Math.abs((low ?? 0) - 0.456)).toBeLessThan(0.003);
  expect(Math.abs((high ?? 0) - 0.36)).toBeLessThan(0.003);
  expect(Math.abs((vanishes ?? 0) - 80)).toBeLessThan(3);
});

test("a plain offset is no leakage but may be one, a loop with its own supply has none, and too little current is none", () => {
  const twoWires = { instrument: { loopPowered: true } };
  const offset = planted({ seen: (part) => part + 0.02 }, twoWires);
  expect(isLeakage(offset, offset.stages[0]!)).toBe(false);
  expect(isLeakage(offset, offset.stages[0]!, true)).toBe(true);
  const fourWires = planted({ signal: leaked });
  expect(isLeakage(fourWires, fourWires.stages[0]!)).toBe(false);
  const less = planted({ signal: (signal) => 0.98 * signal }, twoWires);
  expect(isLeakage(less, less.stages[0]!)).toBe(false);
});
