import { type CurvePoint, type CurveReading, errorCurve } from "../figures/error-curve.ts";
import type { AnalysedReading } from "../readings/analyse-readings.ts";
import type { ReadStage } from "../readings/loop.ts";

/** The error curve of what one stage of the loop gave, with the readings that it rests on. */
export type StageCurve = { readings: readonly CurveReading[]; curve: readonly CurvePoint[] };

/**
 * The error curve of one stage of the loop: what it gave minus its ideal, in percent of span, at each test point.
 *
 * @param analysed readings of one phase
 * @param stage whose error is meant, everything before it in the loop included
 * @returns readings of that stage that are not left out, and their curve; undefined where there is none
 * Source: as `errorCurve`.
 * @example stageCurve([], "value") // undefined
 */
export function stageCurve(analysed: readonly AnalysedReading[], stage: ReadStage): StageCurve | undefined {
  const readings = analysed.flatMap(({ reading, point, cycle, stageErrors, leftOut }) => {
    const error = stageErrors[stage];
    return leftOut === undefined && error !== undefined
      ? [{ point, cycle, reference: reading.reference, direction: reading.direction, error: error.percentSpan }]
      : [];
  });
  return readings.length === 0 ? undefined : { readings, curve: errorCurve(readings) };
}
