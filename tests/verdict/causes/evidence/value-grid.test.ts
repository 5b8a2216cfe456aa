import { expect, test } from "vitest";
import { roundingOf, valueGrid, valueRounding } from "../../../../src/verdict/causes/evidence/value-grid.ts";
import { planted } from "../planted.ts";

test("2, 6 and 12 lie on a grid of 2, decimals on one of a tenth, and two values on none", () => {
  expect(valueGrid([2, 6, 6, 12, 2.0], 1)).toEqual({ step: 2, distinct: 3 });
  expect(valueGrid([0.5, 0.8, 1.2], 1)).toEqual({ step: 0.1, distinct: 3 });
  expect(valueGrid([-4, 0, 6], 0)).toEqual({ step: 2, distinct: 3 });
  expect(valueGrid([1, 2, 1], 0)).toBeUndefined();
  expect(valueGrid([], 0)).toBeUndefined();
});

test("a grid of any step is found, each value within the rounding of what was typed; values that lie anywhere have none", () => {
  // Steps of 500/27 648 · 137, as a division of whole counts leaves them, typed to two decimals.
  const step = (500 / 27_648) * 137;
  const shown = [0, 4, 9, 13, 17, 30, 41].map((count) => Number((200 + step * count).toFixed(2)));
  expect(Math.abs((valueGrid(shown, 2)?.step ?? 0) - step)).toBeLessThan(0.01 / 41);
  const anywhere = [200, 231.17, 274.93, 308.51, 351.88, 402.46, 470.02];
  expect(valueGrid(anywhere, 2)?.step).toBeLessThan(0.02);
});

test("fractions that are cut off leave a mean error of about half a step; round truths are no rounding", () => {
  const cut = roundingOf([1, 2, 3, 5, 8], [1.2, 2.9, 3.5, 5.6, 8.1], 0);
  expect(cut?.step).toBe(1);
  expect(Math.abs((cut?.meanInSteps ?? 0) + 0.46)).toBeLessThan(1e-12);
  expect(roundingOf([0, 10, 20, 30, 40], [0.01, 10.02, 19.99, 30, 40.01], 0)).toBeUndefined();
  expect(roundingOf([1, 2, 3, 5], [1.2, 2.9, 3.5, 5.6], 0)).toBeUndefined();
});

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
