import { expect, test } from "vitest";
import { normalQuantile } from "../../../src/numeric/normal-distribution.ts";
import { globalFalseAccept, spreadOf, tabulated } from "../../../src/verdict/decision/global-false-accept.ts";
import { falseAcceptByMeasuredError, falseRejectByMeasuredError } from "../false-accept-by-measured-error.ts";
import { judgedOnce } from "./sample-risk.ts";

const risk = (testUncertaintyRatio: number, inToleranceProbability: number, guardMultiplier = 1) =>
  globalFalseAccept(
    judgedOnce(testUncertaintyRatio, guardMultiplier),
    1 / normalQuantile((1 + inToleranceProbability) / 2),
  );

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

test("spreads and rates that are none are refused", () => {
  const loops = judgedOnce(4, 1);
  for (const spread of [-1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => globalFalseAccept(loops, spread)).toThrow(RangeError);
  for (const rate of [0, 1, Number.NaN]) expect(() => spreadOf(loops, rate)).toThrow(RangeError);
});

test.each([0.3, 0.9, 0.95])(
  "measuring is taken out: %d found by one result of ratio 2, σ² = σ(found)² − u²",
  (rate) => {
    const found = 1 / normalQuantile((1 + rate) / 2);
    expect(Math.abs(spreadOf(judgedOnce(2, 1), rate) - Math.sqrt(found ** 2 - 1 / 16))).toBeLessThan(1e-9);
  },
);

test("where measuring alone makes as few be found in tolerance, nothing is left of the spread, and no loop is outside", () => {
  const loops = judgedOnce(0.5, 1);
  const spread = spreadOf(loops, 0.7);
  expect(spread).toBe(0);
  const { falseAccept, falseReject } = globalFalseAccept(loops, spread);
  // u = T: 31.73 % of loops without any error are measured outside.
  expect(falseAccept).toBe(0);
  expect(Math.abs(falseReject - 0.31731)).toBeLessThan(1e-5);
});

test("a perfect judge leaves the found rate as it is", () => {
  const loops = tabulated({
    ...{ rejectedAt: (x) => (x > 1 ? 1 : 0), noise: { least: 1, greatest: 1 }, acceptance: 1 },
  });
  expect(Math.abs(spreadOf(loops, 0.95) * normalQuantile(0.975) - 1)).toBeLessThan(1e-9);
});
