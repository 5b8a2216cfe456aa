import { expect, test } from "vitest";
import {
  deviationsFromRepeats,
  repeatedReadings,
  repeatScatter,
  scatterAboutParabola,
  scatterOfWays,
} from "../../../src/analysis/readings/repeated-readings.ts";
import { readColumns, readExpected } from "../../published/read-data.ts";
import { outAndBack } from "../sample-staged.ts";

test("readings of one point and direction belong together, in the order of the first", () => {
  const readings = outAndBack([0, 50, 100], 3, () => 0);
  expect(repeatedReadings(readings).map((group) => group.length)).toEqual([3, 3, 3, 3, 3, 3]);
  expect(repeatedReadings(readings)[3]?.map(({ index }) => index)).toEqual([3, 9, 15]);
});

test("two readings that differ by 1 lie half of it from their mean, in error and in time", () => {
  const readings = outAndBack([0, 100], 2, ({ cycle }) => cycle);
  expect(deviationsFromRepeats(readings).map(({ error }) => error)).toEqual([
    -0.5, 0.5, -0.5, 0.5, -0.5, 0.5, -0.5, 0.5,
  ]);
  expect(deviationsFromRepeats(readings).map(({ elapsed }) => elapsed)[0]).toBe(-2);
});

test("one cycle tells no scatter", () => {
  expect(repeatScatter(outAndBack([0, 50, 100], 1, () => 1))).toBeUndefined();
});

test("the load cell of the NIST handbook scatters as its printed lack-of-fit statistic says", () => {
  const { x = [], y = [] } = readColumns("nist-load-cell");
  const { residualStandardDeviation: s, lackOfFit } = readExpected<Record<string, number>>("nist-load-cell") as {
    residualStandardDeviation: number;
    lackOfFit: number;
  };
  const scatter = repeatScatter(
    x.map((load, index) => ({
      index,
      point: load,
      input: load,
      direction: "rising",
      cycle: 1,
      elapsed: index,
      error: y[index]!,
    })),
  );
  expect(scatter?.degreesOfFreedom).toBe(20);
  // RSS = 38 s² = 18 F p² + 20 p². F is printed to 7 digits, of which the last two were not reproduced by R either: 1e-5.
  const printed = Math.sqrt((38 * s * s) / (18 * lackOfFit + 20));
  expect(Math.abs((scatter?.standardDeviation ?? 0) / printed - 1)).toBeLessThan(1e-5);
});

test("one run out and back tells the scatter by its gaps, or about a parabola each way", () => {
  const points = [0, 20, 40, 60, 80, 100];
  const bent = outAndBack(
    points,
    1,
    ({ point, direction }) => (point / 50) ** 2 + (direction === "rising" ? point : 0),
  );
  expect(scatterAboutParabola(bent)?.standardDeviation).toBeLessThan(1e-12);
  expect(scatterAboutParabola(bent)?.degreesOfFreedom).toBe(6);
  // Gaps of 0, 20 … 100: a standard deviation of √1400, that of a reading is √2 times less.
  expect(scatterOfWays(bent)?.standardDeviation).toBeCloseTo(Math.sqrt(1400 / 2), 9);
  expect(scatterAboutParabola(bent.filter(({ point }) => point > 0))).toBeUndefined();
  expect(scatterOfWays(bent.filter(({ direction }) => direction === "rising"))).toBeUndefined();
});
