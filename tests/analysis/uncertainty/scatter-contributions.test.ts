import { expect, test } from "vitest";
import { pointBudget } from "../../../src/analysis/uncertainty/point-budget.ts";
import { scatterContributions } from "../../../src/analysis/uncertainty/scatter-contributions.ts";
import { basis } from "../sample-basis.ts";

const scatter = { pooledStdDev: 0.3, degreesOfFreedom: 20 };

test("the mean of nine has a third of the scatter", () => {
  const [line] = scatterContributions({ repeatability: scatter, distanceUnit: "mm" }, { readings: 9 }).own;
  expect(Math.abs(line!.standardUncertainty - 0.1)).toBeLessThan(1e-15);
  expect(line!.degreesOfFreedom).toBe(20);
});

test("what cycles differ by is divided by the cycles, not by the readings", () => {
  const betweenCycles = { standardDeviation: 0.4, degreesOfFreedom: 3 };
  const repeatability = { ...scatter, betweenCycles };
  const { own } = scatterContributions({ repeatability, distanceUnit: "mm" }, { readings: 8, cycles: 4 });
  expect(own[1]).toMatchObject({ standardUncertainty: 0.2, degreesOfFreedom: 3 });
});

test("nothing repeated says why", () => {
  const repeatability = { notDetermined: "one cycle only" };
  expect(scatterContributions({ repeatability, distanceUnit: "mm" }, { readings: 1 }).missing).toEqual([
    "repeatability: one cycle only",
  ]);
});

const betweenCycles = { standardDeviation: 0.4, degreesOfFreedom: 3 };
const one = { reference: 50, readings: 1, isReadBothWays: true };

test("of one reading the parts make up its whole uncertainty, whoever shares them, where the scatter is freed of steps", () => {
  const repeatability = { ...scatter, betweenCycles, isAboutLine: true };
  const { budget, sharing } = pointBudget({ ...basis, repeatability }, one);
  expect(sharing.cycle).toBe(0.4);
  const whole = Math.hypot(sharing.all, sharing.cycle, sharing.reading);
  expect(Math.abs(whole / budget.combinedUncertainty - 1)).toBeLessThan(1e-14);
});

test("the scatter of repeats has the steps already: a reading's own part is the greater of both", () => {
  const ownOf = (pooledStdDev: number) =>
    pointBudget({ ...basis, repeatability: { ...scatter, pooledStdDev, betweenCycles } }, one).sharing.reading;
  expect(ownOf(0.7)).toBe(0.7);
  expect(ownOf(0)).toBeGreaterThan(0);
  expect(ownOf(0)).toBe(ownOf(1e-6));
});
