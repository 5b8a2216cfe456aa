import { groupedBy } from "../../model/grouped-by.ts";
import { mean } from "../../numeric/mean.ts";
import { doesScatterChange } from "./scatter-change.ts";

/** A point and direction that every cycle has once. */
export type RowOfCycles = {
  point: number;
  /** Distance less the mean distance of all rows. */
  run: number;
  /** What each cycle's reading leaves of its row and of the line of its cycle, percent of span. */
  left: readonly number[];
};

/** What scatter alone makes the lines of the cycles differ by: variances from one cycle to the next, and how well they are known. */
export type ScatterOfLines = {
  /** Of the slopes, (percent of span for a unit of distance)². */
  ofSlopes: number;
  /** Degrees of freedom of the variance of the slopes. */
  degreesOfFreedom: number;
  /** Of the lines at a distance less the mean distance, (percent of span)². */
  at: (run: number) => number;
};

/** A row that alone decides a line has no residual, whatever it is divided by. */
const leastLeft = 1e-9;

/**
 * What scatter makes the lines through the cycles differ by, of one scatter for all rows or, where the scatter is shown to
 * change along the range, of each test point's own.
 *
 * One for all: s²/Sxx of the slopes, s² with (G − 2)(m − 1) degrees of freedom for m cycles of G rows. Each its own: s² of a
 * row is Σ left²/((m − 1)(1 − h)), h = 1/G + r²/Sxx its leverage, pooled over the rows of a test point; of the slopes
 * Σ r²s²/Sxx² with (Σ r²s²)²/Σ(Σ r²s² of a test point)²/ν degrees of freedom, ν = m − 1 for each row of the point. A line at
 * r has the weights 1/G + r·r(row)/Sxx.
 *
 * @param rows G >= 3 of m >= 2 cycles, at two or more distances
 * @returns variances and degrees of freedom
 * Source: F. E. Satterthwaite, Biometrics Bulletin 2 (1946) 110, for the degrees of freedom; residuals over 1 − h:
 *   J. G. MacKinnon, H. White, J. Econometrics 29 (1985) 305 (from memory).
 * @example scatterOfLines([-1, 0, 1].map((run) => ({ point: run, run, left: [1 - 3 * run ** 2, 3 * run ** 2 - 1] }))).ofSlopes
 *   // 9
 */
export function scatterOfLines(rows: readonly RowOfCycles[]): ScatterOfLines {
  const cycles = (rows[0]?.left.length ?? 0) - 1;
  const squares = sumOf(rows, ({ run }) => run ** 2);
  const pooled = sumOf(rows, squaresOf) / ((rows.length - 2) * cycles);
  const owns = rows.map((row) => {
    const leverage = 1 / rows.length + row.run ** 2 / squares;
    return squaresOf(row) / (cycles * Math.max(leastLeft, 1 - leverage));
  });
  const isOwn = doesScatterChange(
    rows.map(({ run }) => run),
    owns.map(Math.sqrt),
  );
  const variances = isOwn ? ofPoints(rows, owns) : rows.map(() => pooled);
  const across = (weightOf: (run: number) => number) =>
    sumOf(rows, ({ run }, row) => weightOf(run) ** 2 * variances[row]!);
  return {
    ofSlopes: across((run) => run / squares),
    degreesOfFreedom: isOwn ? freedomOf(rows, variances, cycles) : (rows.length - 2) * cycles,
    at: (to) => across((run) => 1 / rows.length + (to * run) / squares),
  };
}

/** The mean of its rows stands for each row of a test point. */
function ofPoints(rows: readonly RowOfCycles[], owns: readonly number[]): readonly number[] {
  const means = new Map(
    [...placesByPoint(rows)].map(([point, places]) => [point, mean(places.map((row) => owns[row]!))]),
  );
  return rows.map(({ point }) => means.get(point)!);
}

function freedomOf(rows: readonly RowOfCycles[], variances: readonly number[], cycles: number): number {
  const found = [...placesByPoint(rows).values()].map((places) => ({
    part: sumOf(places, (row) => rows[row]!.run ** 2 * variances[row]!),
    freedom: cycles * places.length,
  }));
  return sumOf(found, ({ part }) => part) ** 2 / sumOf(found, ({ part, freedom }) => part ** 2 / freedom);
}

function placesByPoint(rows: readonly RowOfCycles[]): ReadonlyMap<number, readonly number[]> {
  return groupedBy([...rows.keys()], (row) => rows[row]!.point);
}

function squaresOf({ left }: RowOfCycles): number {
  return sumOf(left, (one) => one ** 2);
}

function sumOf<Item>(items: readonly Item[], heightOf: (item: Item, index: number) => number): number {
  return items.reduce((sum, item, index) => sum + heightOf(item, index), 0);
}
