import { expect, test } from "vitest";
import { thresholds } from "../../../../src/verdict/causes/evidence/thresholds.ts";

const percentOf = (milliamps: number) => (100 * (milliamps - 4)) / 16;

test("the levels of NAMUR NE 43 in percent of 4 to 20 mA: 3.6, 21, and inside the limits 3.8 and 20.5", () => {
  expect(thresholds.faultPercentLow).toBeCloseTo(percentOf(3.6), 12);
  expect(thresholds.faultPercentHigh).toBeCloseTo(percentOf(21), 12);
  expect(thresholds.saturationBelow).toBeGreaterThan(-percentOf(3.8));
  expect(thresholds.saturationBelow).toBeLessThan(-percentOf(3.6));
  expect(100 + thresholds.saturationAbove).toBeGreaterThan(percentOf(20.5));
  expect(100 + thresholds.saturationAbove).toBeLessThan(percentOf(21));
});

test("a rival is excluded sooner than the best candidate is dropped", () => {
  expect(thresholds.excludedBeyondUncertainties).toBeLessThan(thresholds.namedWithinUncertainties);
});
