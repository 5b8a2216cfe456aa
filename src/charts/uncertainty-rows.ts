import { decidingPoints } from "../record/loop-end.ts";
import type { JudgedPointRecord, PhaseRecord } from "../record/record-schema.ts";
import type { Row } from "./drawing/draw.ts";
import type { Series } from "./series-scales.ts";

type Points = readonly JudgedPointRecord[];

/** From error − U to error + U at each judged test point; distances times `factor`. */
export function uncertaintyRows(series: Series, points: Points, factor: number): readonly Row[] {
  return points.map(({ reference, errorDistance, expandedUncertainty }) => ({
    x: reference,
    low: (errorDistance - expandedUncertainty) * factor,
    high: (errorDistance + expandedUncertainty) * factor,
    series,
  }));
}

/**
 * The limits inside which an error passes, where they are not those of the tolerance; distances times `factor`.
 * A line ends where no error can pass, or where the limit is that of the tolerance, and begins anew behind it; where
 * it would hold for one test point only it is drawn to `reach` on either side, for a line of one point is not seen.
 */
export function acceptanceRows(series: Series, points: Points, factor: number, reach: number): readonly Row[] {
  return runsOf(points).flatMap((run, index) =>
    run.flatMap(({ reference, low, high }) => {
      const places = run.length === 1 ? [reference - reach, reference + reach] : [reference];
      return places.flatMap((x) => [
        { x, y: low * factor, series, line: `${series} ${index} low` },
        { x, y: high * factor, series, line: `${series} ${index} high` },
      ]);
    }),
  );
}

type LimitPoint = { reference: number; low: number; high: number };

/** Neighbouring test points whose acceptance limits are apart from the tolerance. */
function runsOf(points: Points): readonly (readonly LimitPoint[])[] {
  const runs: LimitPoint[][] = [[]];
  for (const { reference, guardBand, acceptanceLow: low, acceptanceHigh: high } of points) {
    if (guardBand === 0 || low === null || high === null) runs.push([]);
    else runs.at(-1)?.push({ reference, low, high });
  }
  return runs;
}

export function hasAcceptanceLimits(phase: PhaseRecord): boolean {
  return runsOf(decidingPoints(phase)).some((run) => run.length > 0);
}

/** Whether at some test point U leaves no error that could pass. */
export function hasNoZone(phase: PhaseRecord): boolean {
  return decidingPoints(phase).some(({ acceptanceLow }) => acceptanceLow === null);
}
