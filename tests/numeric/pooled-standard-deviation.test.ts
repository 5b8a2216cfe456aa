import { expect, test } from "vitest";
import { pooledStandardDeviation } from "../../src/numeric/pooled-standard-deviation.ts";
import { sampleStandardDeviation } from "../../src/numeric/sample-standard-deviation.ts";
import { readColumns } from "../published/read-data.ts";

test("two and three readings pool to √(10/3) on 3 degrees of freedom; a single reading adds nothing", () => {
  const pooled = pooledStandardDeviation(Object.freeze([[1, 3], [10, 12, 14], [7]]));
  expect(pooled).toEqual({ standardDeviation: 1.8257418583505538, degreesOfFreedom: 3 });
});

test("one group pools to its own standard deviation", () => {
  const group = [4.1, 4.4, 3.9, 4.6];
  expect(pooledStandardDeviation([group]).standardDeviation).toBe(sampleStandardDeviation(group));
});

test("the repeats of the linewidth calibration scatter by 0.0641482657599 on 30 degrees of freedom", () => {
  // Data: NIST/SEMATECH e-Handbook 2.3.6.7; the figure is the pure-error standard deviation of R 4.2.2 (not printed on
  // the page): anova of the line against one mean an artefact. Relative tolerance: its 12 digits.
  const { x = [], y = [] } = readColumns("nist-linewidth-calibration");
  const groups = [...new Set(x)].map((artefact) => y.filter((_, row) => x[row] === artefact));
  const pooled = pooledStandardDeviation(groups);
  expect(pooled.degreesOfFreedom).toBe(30);
  expect(Math.abs(pooled.standardDeviation / 0.0641482657599 - 1)).toBeLessThan(1e-12);
});

test("without a repeat anywhere there are no degrees of freedom", () => {
  expect(() => pooledStandardDeviation([[1], [2], []])).toThrow(RangeError);
  expect(() => pooledStandardDeviation([])).toThrow(RangeError);
});
