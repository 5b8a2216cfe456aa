import { expect, test } from "vitest";
import { fitLine } from "../../src/numeric/fit-line.ts";
import { intervalFactor, predictionInterval, slopeInterval } from "../../src/numeric/prediction-interval.ts";

const fit = fitLine(Object.freeze([0, 1, 2, 3]), Object.freeze([1, 3, 4, 8]));

/** Student's t at 97.5 % with 2 degrees of freedom, exactly: c·√(2/(1 − c²)), c = 0.95. */
const coverage = 0.95 * Math.sqrt(2 / (1 - 0.95 ** 2));
const residualVariance = 0.9; // Σ residual² = 1.8 over 2 degrees of freedom

test("the line of the example predicts 9.5 at 4, from 3.0460 to 15.9540", () => {
  const { value, low, high } = predictionInterval(fit, 4);
  const halfWidth = coverage * Math.sqrt(residualVariance * (1 + 1 / 4 + 2.5 ** 2 / 5));
  expect(Math.abs(value - 9.5)).toBeLessThan(1e-13);
  for (const reach of [value - low, high - value]) expect(Math.abs(reach - halfWidth)).toBeLessThan(1e-12);
  expect([low.toFixed(4), high.toFixed(4)]).toEqual(["3.0460", "15.9540"]);
});

test("its slope is 2.2, from 0.3745 to 4.0255", () => {
  const { value, low, high } = slopeInterval(fit);
  const halfWidth = coverage * Math.sqrt(residualVariance / 5);
  expect(Math.abs(value - 2.2)).toBeLessThan(1e-13);
  for (const reach of [value - low, high - value]) expect(Math.abs(reach - halfWidth)).toBeLessThan(1e-12);
  expect([low.toFixed(4), high.toFixed(4)]).toEqual(["0.3745", "4.0255"]);
});

test("points on a line predict the line, and a wider confidence a wider interval", () => {
  const { value, low, high } = predictionInterval(fitLine([0, 1, 2], [1, 2, 3]), 10);
  expect([value, low, high]).toEqual([11, 11, 11]);
  expect(predictionInterval(fit, 4, 0.99).high).toBeGreaterThan(predictionInterval(fit, 4, 0.95).high);
  expect(slopeInterval(fit, intervalFactor(fit, 0.99)).low).toBeLessThan(slopeInterval(fit).low);
});

test("two points predict no interval", () => {
  const two = fitLine([0, 1], [0, 1]);
  expect(() => predictionInterval(two, 2)).toThrow(new RangeError("two points predict no interval"));
  expect(() => slopeInterval(two)).toThrow(new RangeError("two points give a slope no interval"));
});

test.each([0, 1, -0.5, 1.5, Number.NaN])("a confidence of %d is refused", (confidence) => {
  expect(() => predictionInterval(fit, 4, confidence)).toThrow(RangeError);
  expect(() => slopeInterval(fit, intervalFactor(fit, confidence))).toThrow(RangeError);
});
