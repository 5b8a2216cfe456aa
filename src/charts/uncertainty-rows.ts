import type { JudgedPointRecord, PhaseRecord } from "../record/record-schema.ts";
import type { Row } from "./draw.ts";
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
 * The limits inside which an error passes, apart from the tolerance; distances times `factor`. A line ends where the
 * limit is that of the tolerance, or where no error can pass, and begins anew behind it.
 */
export function acceptanceRows(series: Series, points: Points, factor: number): readonly Row[] {
  let run = 0;
  return points.flatMap(({ reference, guardBand, acceptanceLow, acceptanceHigh }) => {
    if (guardBand === 0 || acceptanceLow === null || acceptanceHigh === null) {
      run += 1;
      return [];
    }
    return [
      { x: reference, y: acceptanceLow * factor, series, line: `${series} low ${run}` },
      { x: reference, y: acceptanceHigh * factor, series, line: `${series} high ${run}` },
    ];
  });
}

/** Whether at some test point U leaves no error that could pass. */
export function hasNoZone({ points }: PhaseRecord): boolean {
  return points.some(({ acceptanceLow }) => acceptanceLow === null);
}

/** The test point of the picture that the record calls the worst; where that is one of the controller, the riskiest. */
export function worstPointOf({ points, worstPoint }: PhaseRecord): JudgedPointRecord | undefined {
  const [first, ...others] = points;
  if (first === undefined) return undefined;
  const named = worstPoint?.of === "sensor" ? points[worstPoint.index] : undefined;
  return named ?? others.reduce((left, right) => (right.specificRisk > left.specificRisk ? right : left), first);
}
