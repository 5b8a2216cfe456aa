import { type CurvePoint, type CurveReading, errorCurve } from "../figures/error-curve.ts";
import type { AnalysedReading } from "../readings/analyse-readings.ts";

/** The error curve of what the controller showed, with the readings that it rests on. */
export type LoopCurve = { readings: readonly CurveReading[]; curve: readonly CurvePoint[] };

/**
 * The error curve of the loop: controller value minus its ideal, in percent of span, at each test point.
 *
 * @param analysed readings of one phase
 * @returns readings that have a controller value and are not left out, and their curve; undefined where there is none
 * Source: as `errorCurve`.
 * @example loopCurve([]) // undefined
 */
export function loopCurve(analysed: readonly AnalysedReading[]): LoopCurve | undefined {
  const readings = analysed.flatMap(({ reading, point, cycle, loopError, leftOut }) =>
    leftOut === undefined && loopError !== undefined
      ? [{ point, cycle, reference: reading.reference, direction: reading.direction, error: loopError.percentSpan }]
      : [],
  );
  return readings.length === 0 ? undefined : { readings, curve: errorCurve(readings) };
}
