import { expect, test } from "vitest";
import {
  deviationsFromRepeats,
  repeatedReadings,
  repeatScatter,
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
