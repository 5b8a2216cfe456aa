import { groupedBy } from "../../model/grouped-by.ts";
import { mean } from "../../numeric/mean.ts";
import type { CurveReading } from "../figures/error-curve.ts";
import type { KnownDeviation } from "./cycle-differences.ts";
import { type RowOfCycles, scatterOfLines } from "./scatter-of-lines.ts";
import { type VarianceRatio, varianceRatio } from "./variance-ratio.ts";

/** What the lines through the cycles differ by beyond the scatter; standard deviations from one cycle to the next. */
export type CycleSlopes = {
  cycles: number;
  /** Of the slopes, percent of span for a unit of distance. */
  betweenSlopes: KnownDeviation;
  /** Of the lines at a distance, percent of span. */
  betweenAt: (reference: number) => KnownDeviation;
  /** What a cycle makes at a distance, percent of span, as far from the mean of all cycles. */
  effectAt: (cycle: number, reference: number) => number;
} & VarianceRatio;

const fewestGroups = 3;

/**
 * Whether the cycles have slopes of their own, and what their lines differ by along the range.
 *
 * Of the points and directions that every cycle has once: each error is what its point and direction make, plus a line of
 * its cycle, plus scatter. F is the variance of the slopes over that which scatter makes of them (`scatterOfLines`), m − 1
 * and (G − 2)(m − 1) degrees of freedom for m cycles of G readings, or fewer where each test point has a scatter of its own;
 * above its 95 % limit the cycles differ in slope. The variance between the lines at x, and between the slopes, is then what
 * the m of them have less what scatter makes.
 *
 * @param readings errors in percent of span
 * @returns what the lines of the cycles differ by, and the test; undefined for one cycle, or where fewer than three points
 *   and directions, or two distances, have one reading of every cycle
 * Source: analysis of variance of a line with a random offset and a random slope for each cycle, balanced (H. Scheffé, The
 *   Analysis of Variance (1959), 6.5 and 7.2); JCGM 100:2008, H.5 (between and within). Where the scatter changes along the
 *   range, the ratio is that of M. B. Brown and A. B. Forsythe, Technometrics 16 (1974) 129 (from memory); the slopes are all
 *   of one variance, so that their degrees of freedom are m − 1 without an approximation.
 * @example cycleSlopes([[0, 0, 0], [0, 1, 4]].flatMap((row, cycle) => row.map((error, point) => ({ point,
 *   reference: point, error, direction: "rising", cycle })))).ratio // 12
 */
export function cycleSlopes(readings: readonly CurveReading[]): CycleSlopes | undefined {
  const table = completeRows(readings);
  const [cycles, groups] = [table.cycles.length, table.rows.length];
  const distances = table.rows.map(({ reference }) => reference);
  const middle = groups === 0 ? 0 : mean(distances);
  const squaresOfDistances = sumOver(distances, (distance) => (distance - middle) ** 2);
  if (cycles < 2 || groups < fewestGroups || !(squaresOfDistances > 0)) return undefined;
  const deviations = doublyCentred(table.rows.map(({ errors }) => errors));
  const slopes = table.cycles.map(
    (_, cycle) =>
      sumOver(deviations.rows, (row, group) => ((distances[group] as number) - middle) * (row[cycle] as number)) /
      squaresOfDistances,
  );
  const rows = table.rows.map(({ point, reference }, group): RowOfCycles => {
    const run = reference - middle;
    return { point, run, left: deviations.rows[group]!.map((one, cycle) => one - slopes[cycle]! * run) };
  });
  const slopeFreedom = cycles - 1;
  const scatter = scatterOfLines(rows);
  const between = (effects: readonly number[], ofScatter: number): KnownDeviation => ({
    standardDeviation: Math.sqrt(Math.max(0, sumOver(effects, (effect) => effect ** 2) / slopeFreedom - ofScatter)),
    degreesOfFreedom: slopeFreedom,
  });
  const at = (cycle: number, reference: number) =>
    (deviations.ofColumns[cycle] as number) + (slopes[cycle] as number) * (reference - middle);
  return {
    cycles,
    betweenSlopes: between(slopes, scatter.ofSlopes),
    betweenAt: (reference) =>
      between(
        slopes.map((_, cycle) => at(cycle, reference)),
        scatter.at(reference - middle),
      ),
    effectAt: (cycle, reference) => {
      const index = table.cycles.indexOf(cycle);
      return index === -1 ? 0 : at(index, reference);
    },
    ...varianceRatio(
      {
        square: (squaresOfDistances * sumOver(slopes, (slope) => slope ** 2)) / slopeFreedom,
        freedom: slopeFreedom,
        readings: groups,
      },
      { square: squaresOfDistances * scatter.ofSlopes, freedom: scatter.degreesOfFreedom },
    ),
  };
}

/** The points and directions that every cycle has exactly once: their mean distance, and an error a cycle. */
function completeRows(readings: readonly CurveReading[]) {
  const cycles = [...new Set(readings.map(({ cycle }) => cycle))].toSorted((one, other) => one - other);
  const rows = [...groupedBy(readings, ({ point, direction }) => `${point} ${direction}`).values()].flatMap((group) => {
    const errorOf = new Map(group.map(({ cycle, error }) => [cycle, error]));
    if (group.length !== cycles.length || errorOf.size !== cycles.length) return [];
    return [
      {
        point: group[0]!.point,
        reference: mean(group.map(({ reference }) => reference)),
        errors: cycles.map((cycle) => errorOf.get(cycle) as number),
      },
    ];
  });
  return { cycles, rows };
}

/** What is left of a table without the means of its rows and columns, and how far those of the columns are from the whole. */
function doublyCentred(table: readonly (readonly number[])[]) {
  const level = table.map(mean);
  const freed = table.map((row, index) => row.map((value) => value - (level[index] as number)));
  const ofColumns = (freed[0] ?? []).map((_, column) => mean(freed.map((row) => row[column] as number)));
  return { ofColumns, rows: freed.map((row) => row.map((value, column) => value - (ofColumns[column] as number))) };
}

function sumOver<Item>(items: readonly Item[], heightOf: (item: Item, index: number) => number): number {
  return items.reduce((sum, item, index) => sum + heightOf(item, index), 0);
}
