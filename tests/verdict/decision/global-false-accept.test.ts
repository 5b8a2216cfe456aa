import { expect, test } from "vitest";
import { globalFalseAccept } from "../../../src/verdict/decision/global-false-accept.ts";
import { falseAcceptByMeasuredError, falseRejectByMeasuredError } from "../false-accept-by-measured-error.ts";

const risk = (testUncertaintyRatio: number, inToleranceProbability: number, guardMultiplier = 1) =>
  globalFalseAccept({ testUncertaintyRatio, inToleranceProbability, guardMultiplier });

test("four to one with 95 % in tolerance: 0.858 % false accept, 1.554 % false reject", () => {
  // 0.00858266480892 and 0.0155365130306 by mpmath, tests/published/false-accept-grid/recompute.py.
  const { falseAccept, falseReject } = risk(4, 0.95);
  expect(Math.abs(falseAccept / 0.00858266480892 - 1)).toBeLessThan(1e-9);
  expect(Math.abs(falseReject / 0.0155365130306 - 1)).toBeLessThan(1e-9);
});

test.each([
  [0.7, 0.5, 0.4],
  [1, 0.9, 1],
  [3, 0.99, 0.9],
  [8, 0.8, 1.05],
])("at ratio %d, %d in tolerance, multiplier %d the measured error instead of the true one gives the same", (...of) => {
  const [ratio, rate, acceptance] = of;
  const { falseAccept, falseReject } = risk(ratio, rate, acceptance);
  const uncertainty = 1 / (2 * ratio);
  // The midpoint rule in 2000 strips is good to about 1e-6 of the result.
  expect(Math.abs(falseAccept / falseAcceptByMeasuredError(uncertainty, rate, acceptance) - 1)).toBeLessThan(3e-6);
  expect(Math.abs(falseReject / falseRejectByMeasuredError(uncertainty, rate, acceptance) - 1)).toBeLessThan(3e-6);
});

test("nothing is accepted where nothing can be, and then all that is in tolerance is rejected", () => {
  const { falseAccept, falseReject } = risk(4, 0.9, 0);
  expect(falseAccept).toBe(0);
  expect(Math.abs(falseReject - 0.9)).toBeLessThan(1e-9);
});

test("a perfect measurement decides rightly, a useless one as if at random", () => {
  const perfect = risk(1e5, 0.9);
  expect(perfect.falseAccept).toBeLessThan(1e-5);
  expect(perfect.falseReject).toBeLessThan(1e-5);
  // u is 500 times T: hardly any error is measured inside, so all good ones but 0.1 % are rejected.
  expect(Math.abs(risk(1e-3, 0.9).falseReject - 0.9)).toBeLessThan(2e-3);
});

test("a narrower acceptance zone trades false accepts for false rejects", () => {
  expect(risk(2, 0.9, 0.8).falseAccept).toBeLessThan(risk(2, 0.9).falseAccept);
  expect(risk(2, 0.9, 0.8).falseReject).toBeGreaterThan(risk(2, 0.9).falseReject);
});

test("ratios, probabilities and multipliers that are none are refused", () => {
  for (const ratio of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => risk(ratio, 0.9)).toThrow(RangeError);
  for (const rate of [0, 1, Number.NaN]) expect(() => risk(4, rate)).toThrow(RangeError);
  for (const multiplier of [-0.1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => risk(4, 0.9, multiplier)).toThrow(RangeError);
});
