import type { AnalysedReading } from "../../analysis/readings/analyse-readings.ts";
import type { ReadingRecord } from "../../record/record-schema.ts";
import type { ReadingVerdict } from "../../verdict/decision/decide-phase.ts";

/**
 * One reading as the record carries it; what was not read or cannot be had is absent.
 *
 * @param analysed the reading and what follows from it
 * @param row line of its file
 * @param verdict inside the tolerance or not; undefined where it is left out
 * @returns the reading, numbers at full precision
 * Source: each figure's own file in `analysis`.
 * @example assembleReading({ reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50,
 *   signal: 12.16 }, point: 50, cycle: 1, tolerance: { low: -1, high: 1 }, stageErrors: {}, shares: {}, isOutsideAnyway: false }, 14,
 *   "pass").row // 14
 */
export function assembleReading(
  analysed: AnalysedReading,
  row: number,
  verdict: ReadingVerdict | undefined,
): ReadingRecord {
  const { reading, point, cycle, error, loopError, stageErrors, shares, tolerance, leftOut, railed } = analysed;
  const { reference, direction, signal, signalAtCard, counts, value, time, remark } = reading;
  return withoutUndefined({
    row,
    cycle,
    direction,
    point,
    reference,
    signal,
    signalAtCard,
    counts,
    value,
    time,
    remark,
    indicated: error?.indicated,
    errorDistance: error?.errorDistance,
    errorSignal: error?.errorOutput,
    errorPercentSpan: error?.errorPercentSpan,
    wiringErrorDistance: stageErrors.signalAtCard?.distance,
    inputCardErrorDistance: stageErrors.counts?.distance,
    loopErrorValue: loopError?.value,
    loopErrorDistance: loopError?.distance,
    shares: Object.keys(shares).length === 0 ? undefined : shares,
    toleranceLow: tolerance.low,
    toleranceHigh: tolerance.high,
    verdict,
    leftOut,
    railed,
  }) as ReadingRecord;
}

function withoutUndefined(fields: Record<string, unknown>): Record<string, unknown> {
  const kept: Record<string, unknown> = {};
  for (const name in fields) if (fields[name] !== undefined) kept[name] = fields[name];
  return kept;
}
