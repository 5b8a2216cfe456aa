import { expect, test } from "vitest";
import { spreadGrowth } from "../../../src/analysis/figures/spread-growth.ts";
import { expectNear, rounding } from "../sample-loop.ts";
import { outAndBack } from "../sample-staged.ts";

const points = [0, 25, 50, 75, 100];
const signs = [-1, 1];

test("deviations of ±0.1 near and ±1 far give scatters of √2 times that", () => {
  const readings = outAndBack(points, 2, ({ point, cycle }) => (signs[cycle - 1] ?? 0) * (0.1 + 0.009 * point));
  const growth = spreadGrowth(readings);
  // Twenty readings, thirds of six: near 4 × 0.1 and 2 × 0.325, far 4 × 1 and 2 × 0.775; two repeats widen by √2.
  expectNear(growth?.near, Math.SQRT2 * Math.sqrt((4 * 0.1 ** 2 + 2 * 0.325 ** 2) / 6), rounding);
  expectNear(growth?.far, Math.SQRT2 * Math.sqrt((4 + 2 * 0.775 ** 2) / 6), rounding);
  expect(growth?.slopeInUncertainties).toBeGreaterThan(100);
});

test("an even scatter does not grow", () => {
  const growth = spreadGrowth(outAndBack(points, 3, ({ index }) => Math.sin(12.9898 * index)));
  expect(Math.abs(growth?.slopeInUncertainties ?? 9)).toBeLessThan(3);
});

test("no repeats, few of them, or no scatter tell nothing", () => {
  expect(spreadGrowth(outAndBack(points, 1, () => 0))).toBeUndefined();
  expect(spreadGrowth(outAndBack([0, 100], 2, ({ cycle }) => cycle))).toBeUndefined();
  expect(spreadGrowth(outAndBack(points, 2, () => 0))).toBeUndefined();
});
