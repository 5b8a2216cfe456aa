import type { Row } from "./drawing/draw.ts";
import type { Series, Shape } from "./series-scales.ts";

/** One mark of a series, and the test point that it belongs to. */
export type DrawnSeries = { point: number; x: number; y: number; series: Series; shape: Shape };

/** The mean mark of each test point, for each series and shape on its own. */
export function meansOf(rows: readonly DrawnSeries[]): readonly Row[] {
  const groups = new Map<string, DrawnSeries[]>();
  for (const row of rows) {
    const key = `${row.series} ${row.shape} ${row.point}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()].map((group) => {
    const [{ series, shape }] = group as [DrawnSeries];
    return { x: mean(group.map(({ x }) => x)), y: mean(group.map(({ y }) => y)), series, shape };
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
