import { expect, test } from "vitest";
import { driftInTime, withoutDrift } from "../../../src/analysis/years/drift-in-time.ts";
import { expectNear } from "../sample-loop.ts";
import { outAndBack } from "../sample-staged.ts";

const points = [0, 25, 50, 75, 100];

test("an error that grows by 0.8 from the first to the last reading drifts by 0.8, whatever else depends on the distance", () => {
  const readings = outAndBack(points, 3, ({ point, direction, elapsed }) => {
    return 2 + point / 40 + (direction === "rising" ? 0.3 : 0) + (0.8 * elapsed) / 29;
  });
  const drift = driftInTime(readings);
  expectNear(drift?.total, 0.8, 1e-14, "exact but for rounding");
  expectNear(drift?.totalStandardUncertainty, 0, 1e-14);
  expect(drift?.degreesOfFreedom).toBe(30 - 10 - 1);
});

test("by hand: two groups of two with slopes 0.1 and 0.1083, and the uncertainty of one degree of freedom", () => {
  const readings = [
    { point: 0, elapsed: 0, error: 0.9 },
    { point: 0, elapsed: 2, error: 1.1 },
    { point: 100, elapsed: 1, error: 2.7 },
    { point: 100, elapsed: 7, error: 3.35 },
  ].map((one, index) => ({ ...one, index, input: one.point, direction: "rising" as const, cycle: 1 }));
  const drift = driftInTime(readings);
  // Deviations ±0.1 over ±1 and ±0.325 over ±3: slope (2·0.1 + 2·0.975)/20, residuals ∓0.0075 and ±0.0025, 1 degree.
  expectNear(drift?.rate, 0.1075, 1e-15);
  expectNear(drift?.totalStandardUncertainty, 7 * Math.sqrt((2 * 0.0075 ** 2 + 2 * 0.0025 ** 2) / 20), 1e-15);
});

test("one cycle, or repeats at one time, tell no drift", () => {
  expect(driftInTime(outAndBack(points, 1, () => 1))).toBeUndefined();
  const atOnce = outAndBack(points, 2, () => 1).map((reading) => ({ ...reading, elapsed: 0 }));
  expect(driftInTime(atOnce)).toBeUndefined();
});

test("without its drift each reading is as it would have been in the middle of the phase", () => {
  const readings = outAndBack(points, 2, ({ elapsed }) => elapsed / 10);
  const still = withoutDrift(readings, driftInTime(readings)!);
  for (const { error } of still) expectNear(error, 0.95, 1e-14);
});
