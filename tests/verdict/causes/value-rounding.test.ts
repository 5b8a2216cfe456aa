import { expect, test } from "vitest";
import { valueRounding } from "../../../src/verdict/causes/value-rounding.ts";
import { planted } from "./planted.ts";

test("a value in whole numbers lies on a grid of 1, half a step low; one with decimals on none that shows", () => {
  const roundingIn = (fault: Parameters<typeof planted>[0]) => {
    const { stages, loop, readings } = planted(fault, { valueEnds: [0, 7] });
    return valueRounding(stages[1]!, loop, readings, 4);
  };
  const cut = roundingIn({ shown: Math.trunc });
  expect(cut?.step).toBe(1);
  // 44 readings of a uniform error: 0.29/√44 = 0.04 steps, three times that.
  expect(Math.abs((cut?.meanInSteps ?? 0) + 0.5)).toBeLessThan(0.15);
  expect(roundingIn({})?.step ?? 0).toBeLessThan(0.001);
});
