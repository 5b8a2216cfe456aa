import { describe, expect, test } from "vitest";
import { cycleSlopes } from "../../../src/analysis/uncertainty/cycle-slopes.ts";
import { scatterOfLines } from "../../../src/analysis/uncertainty/scatter-of-lines.ts";
import { fQuantile } from "../../../src/numeric/f-quantile.ts";
import { randomFrom } from "../../computed/loops/random.ts";
import { fewestByChance, mostByChance } from "../../computed/uncertainty/shares.ts";
import { howMany } from "../../how-many.ts";
import { curveReading, expectNear } from "../sample-loop.ts";

/** Three cycles out and back of six points, made by R's rnorm with a scatter of 2 to 27; hundredths, rising before falling. */
const errors = [
  [5, -2, -1, 1, -4, -3, 25, 10, 19, 64, 30, 93],
  [5, 1, 7, -3, -23, -16, -18, -1, -6, -8, 5, -67],
  [3, 0, 7, 6, -8, 1, -9, 18, 10, 6, -1, -5],
];
const grown = errors.flatMap((row, cycle) =>
  row.map((hundredths, place) =>
    curveReading(20 * Math.floor(place / 2), hundredths / 100, place % 2 === 0 ? "rising" : "falling", cycle + 1),
  ),
);

describe("a scatter that is shown to grow, by R 4.2.2: nested lm, hatvalues, and the hat row of a line", () => {
  const found = cycleSlopes(grown)!;

  test("its own limit refuses slopes that one scatter for all would have shown, F = 8.83 above 3.49", () => {
    expectNear(found.ratio, 4.5786323313084489, 1e-9);
    expectNear(found.ratioLimit, 5.7908412030074796, 1e-9);
    expect(found.isShown).toBe(false);
  });

  test("what the lines differ by is freed of it, each where it is", () => {
    expectNear(found.betweenSlopes.standardDeviation, 0.0041211811820547235, 1e-12);
    expectNear(found.betweenAt(0).standardDeviation, 0.054090432355360332, 1e-12);
    expectNear(found.betweenAt(100).standardDeviation, 0.34841504920383759, 1e-12);
  });
});

test("one scatter for all is that of the rows: s²/Sxx, and s²·(1/G + r²/Sxx) of a line at r", () => {
  const rows = [-1, 0, 1].map((run) => ({ point: run, run, left: [1 - 3 * run ** 2, 3 * run ** 2 - 1] }));
  const { ofSlopes, at, degreesOfFreedom } = scatterOfLines(rows);
  // Squares 8, 2 and 8 of one degree of freedom, Sxx = 2: by hand.
  expectNear(ofSlopes, 18 / 2, 1e-12);
  expectNear(at(0), 18 / 3, 1e-12);
  expectNear(at(2), 18 * (1 / 3 + 4 / 2), 1e-12);
  expect(degreesOfFreedom).toBe(1);
});

test("cycles of one slope are said to differ in about five of a hundred where the scatter grows, and in more by one scatter for all", () => {
  const random = randomFrom(57);
  const trials = Array.from({ length: howMany(500, 3000) }, () => {
    const readings = Array.from({ length: 5 }, (_, cycle) =>
      Array.from({ length: 22 }, (_, place) => {
        const point = Math.floor(place / 2);
        return curveReading(
          point,
          random.normal(0.2 + 0.16 * point),
          place % 2 === 0 ? "rising" : "falling",
          cycle + 1,
        );
      }),
    ).flat();
    return { own: cycleSlopes(readings)!.isShown, pooled: pooledRatio(readings) > fQuantile(0.95, 4, 80) };
  });
  const shownBy = (which: "own" | "pooled") => trials.filter((trial) => trial[which]).length;
  // Estimated leverages and Satterthwaite's degrees of freedom are worth 1 %; beyond that other seeds break a limit with
  // less than one in a million. Only the many show that one scatter for all speaks in 8.6 % of them.
  expect(shownBy("own")).toBeGreaterThanOrEqual(fewestByChance(trials.length, 0.04));
  expect(shownBy("own")).toBeLessThanOrEqual(mostByChance(trials.length, 0.065));
  expect(shownBy("pooled")).toBeGreaterThanOrEqual(fewestByChance(trials.length, 0.086));
});

/** F of the slopes by one scatter for all, by textbook sums over the table of rows and cycles. */
function pooledRatio(readings: ReturnType<typeof curveReading>[]): number {
  const table = Array.from({ length: 5 }, (_, cycle) => readings.slice(22 * cycle, 22 * cycle + 22));
  const meanOf = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const ofRows = Array.from({ length: 22 }, (_, row) => meanOf(table.map((cycle) => cycle[row]!.error)));
  const freed = table.map((cycle) => cycle.map(({ error }, row) => error - ofRows[row]!));
  const runs = Array.from({ length: 22 }, (_, row) => Math.floor(row / 2) - 5);
  const squares = runs.reduce((sum, run) => sum + run ** 2, 0);
  const slopes = freed.map((cycle) => cycle.reduce((sum, one, row) => sum + one * runs[row]!, 0) / squares);
  const left = freed.flatMap((cycle, index) =>
    cycle.map((one, row) => (one - meanOf(cycle) - slopes[index]! * runs[row]!) ** 2),
  );
  const ofSlopes = (squares * slopes.reduce((sum, slope) => sum + slope ** 2, 0)) / 4;
  return ofSlopes / (left.reduce((sum, one) => sum + one, 0) / 80);
}
