import { expect, test } from "vitest";
import { idealOutput } from "../../src/record/ideal-output.ts";

const loop = { rangeLower: 200, rangeUpper: 2000, signalLower: 20, signalUpper: 4, valueLower: 0, valueUpper: 100 };

test("each quantity runs straight between its ends, whichever way", () => {
  expect(idealOutput(loop, "signal", 200)).toBe(20);
  expect(idealOutput(loop, "signalAtCard", 650)).toBe(16);
  expect(idealOutput(loop, "value", 1550)).toBe(75);
});

test("where its ends are not stated nothing is expected", () => {
  expect(idealOutput(loop, "counts", 200)).toBeUndefined();
});
