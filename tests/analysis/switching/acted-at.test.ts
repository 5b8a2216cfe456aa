import { expect, test } from "vitest";
import { actedAt } from "../../../src/analysis/switching/acted-at.ts";

const point = (reference: number, up: number, down: number) => ({
  reference,
  up,
  down,
  mean: (up + down) / 2,
  expandedUncertainty: 1 + reference / 1000,
});

test("a loop that reads 2 % of 1000 mm long acts 20 mm early", () => {
  const points = [point(0, 2, 2), point(500, 2, 2), point(1000, 2, 2)];
  expect(actedAt(points, 600, "recede", 1000)).toEqual({ distance: 580, expandedUncertainty: 2 });
});

test("a gain off by a tenth: x + 0.1 x = 550 at 500; rising and falling errors go their own ways", () => {
  const points = [point(0, 0, 1), point(1000, 10, 11)];
  const receding = actedAt(points, 550, "recede", 1000);
  expect("distance" in receding && receding.distance).toBeCloseTo(500, 9);
  const approaching = actedAt(points, 550, "approach", 1000);
  // x + 10 + 0.1 x = 550.
  expect("distance" in approaching && approaching.distance).toBeCloseTo(540 / 1.1, 9);
});

test("nothing is extrapolated beyond the test points, and one point tells nothing", () => {
  const points = [point(100, 1, 1), point(900, 1, 1)];
  expect(actedAt(points, 950, "recede", 1000)).toHaveProperty("notDetermined");
  expect(actedAt(points, 909, "recede", 1000)).toHaveProperty("distance");
  expect(actedAt(points.slice(1), 909, "recede", 1000)).toHaveProperty("notDetermined");
});
