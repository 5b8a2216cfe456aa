import { endError } from "../record/loop-end.ts";
import type { PhaseName } from "../record/phase-name.ts";
import { spanOf } from "../record/range.ts";
import type { CalibrationRecord, JudgedPointRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import type { Row } from "./drawing/draw.ts";

/** A reading that is in the figures and has an error. */
export type DrawnReading = ReadingRecord & { errorDistance: number; errorPercentSpan: number };

export function drawnReadings(phase: PhaseRecord): readonly DrawnReading[] {
  return phase.readings.filter(
    (reading): reading is DrawnReading =>
      reading.leftOut === undefined && reading.errorDistance !== undefined && reading.errorPercentSpan !== undefined,
  );
}

/** The same with the errors where the loop ends: at the last stage that was read of each reading. */
export function endReadings({ instrument }: CalibrationRecord, phase: PhaseRecord): readonly DrawnReading[] {
  const span = spanOf(instrument);
  return phase.readings.flatMap((reading) => {
    const end = reading.leftOut === undefined ? endError(reading) : undefined;
    if (end === undefined) return [];
    const errorPercentSpan = end.of === "sensor" ? reading.errorPercentSpan : undefined;
    return [
      {
        ...reading,
        errorDistance: end.errorDistance,
        errorPercentSpan: errorPercentSpan ?? (100 * end.errorDistance) / span,
      },
    ];
  });
}

export function readingRows(series: PhaseName, readings: readonly DrawnReading[]): readonly Row[] {
  return readings.map(({ reference, errorPercentSpan, direction }) => ({
    x: reference,
    y: errorPercentSpan,
    series,
    shape: direction,
  }));
}

/** Mean error of each test point, one line for each direction. */
export function meanRows(series: PhaseName, points: readonly JudgedPointRecord[]): readonly Row[] {
  return points.flatMap(({ reference, up, down }) => [
    ...(up === null ? [] : [{ x: reference, y: up, series, shape: "rising" }]),
    ...(down === null ? [] : [{ x: reference, y: down, series, shape: "falling" }]),
  ]);
}

/** The tolerance at every reference distance that was read, in distance times `factor`. */
export function toleranceRows(phases: readonly PhaseRecord[], factor: number): readonly Row[] {
  const rowByReference = new Map(
    phases
      .flatMap(({ readings }) => readings)
      .map(({ reference, toleranceLow, toleranceHigh }) => [
        reference,
        { x: reference, low: toleranceLow * factor, high: toleranceHigh * factor },
      ]),
  );
  return [...rowByReference.values()].sort((left, right) => left.x - right.x);
}
