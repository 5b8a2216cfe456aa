import { expect, test } from "vitest";
import { directionGap } from "../../../src/analysis/figures/direction-gap.ts";
import { expectNear, rounding } from "../sample-loop.ts";
import { outAndBack } from "../sample-staged.ts";

const points = [0, 25, 50, 75, 100];
const way = (direction: string) => (direction === "rising" ? -0.5 : 0.5);

test("play is the same gap inside and at the ends, in each cycle", () => {
  const gap = directionGap(outAndBack(points, 3, ({ direction }) => 0.8 * way(direction)));
  expectNear(gap?.inner, -0.8, rounding);
  expectNear(gap?.outer, -0.8, rounding);
  expect(gap?.byCycle.map((one) => Number(one.toFixed(12)))).toEqual([-0.8, -0.8, -0.8]);
  expectNear(gap?.unevenness, 0, rounding);
  expect(gap?.innerPoints).toBe(3);
});

test("a lag leaves half of the gap at the ends, where a run begins settled", () => {
  const lag = outAndBack(points, 2, ({ direction, point }) => {
    const isFirstOfRun = point === (direction === "rising" ? 0 : 100);
    return isFirstOfRun ? 0 : 0.8 * way(direction);
  });
  const gap = directionGap(lag);
  expectNear(gap?.inner, -0.8, rounding);
  expectNear(gap?.outer, -0.4, rounding);
});

test("a hysteresis closes at the ends and is uneven inside", () => {
  const loop = outAndBack(points, 2, ({ direction, point }) => (4 * way(direction) * point * (100 - point)) / 10_000);
  const gap = directionGap(loop);
  expectNear(gap?.inner, -(0.75 + 1 + 0.75) / 3, rounding);
  expectNear(gap?.outer, 0, rounding);
  expectNear(gap?.unevenness, Math.sqrt((2 / 144 + 1 / 36) / 2 / 2), rounding);
});

test("its uncertainty follows from the scatter: s/√3 a mean, √2 of it a gap, over three points", () => {
  const readings = outAndBack(points, 3, ({ cycle }) => cycle);
  const gap = directionGap(readings);
  expectNear(gap?.innerStandardUncertainty, (1 / Math.sqrt(3)) * Math.SQRT2 * (1 / Math.sqrt(3)), rounding);
  expect(gap?.degreesOfFreedom).toBe(20);
});

test("one direction, two points, or one inner point of one cycle tell no gap", () => {
  const rising = outAndBack(points, 2, () => 0).filter(({ direction }) => direction === "rising");
  expect(directionGap(rising)).toBeUndefined();
  expect(directionGap(outAndBack([0, 100], 2, () => 0))).toBeUndefined();
  expect(directionGap(outAndBack([0, 50, 100], 1, () => 0))).toBeUndefined();
});
