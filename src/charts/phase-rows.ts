import type { CalibrationRecord, PhaseRecord, ReadingRecord } from "../record/record-schema.ts";
import type { Row } from "./drawing/draw.ts";

export type PhaseName = keyof CalibrationRecord["phases"];

export const phaseWords: Readonly<Record<PhaseName, string>> = { asFound: "as found", asLeft: "as left" };

/** A reading that is in the figures and has an error. */
export type DrawnReading = ReadingRecord & { errorDistance: number; errorPercentSpan: number };

const phaseNames: readonly PhaseName[] = ["asFound", "asLeft"];

/** The phases that a record has, in the order in which they happened. */
export function phasesOf(record: CalibrationRecord): readonly (readonly [PhaseName, PhaseRecord])[] {
  return phaseNames.flatMap((name) => {
    const phase = record.phases[name];
    return phase === undefined ? [] : [[name, phase] as const];
  });
}

export function drawnReadings(phase: PhaseRecord): readonly DrawnReading[] {
  return phase.readings.filter(
    (reading): reading is DrawnReading =>
      reading.leftOut === undefined && reading.errorDistance !== undefined && reading.errorPercentSpan !== undefined,
  );
}

export function readingRows(series: PhaseName, phase: PhaseRecord): readonly Row[] {
  return drawnReadings(phase).map(({ reference, errorPercentSpan, direction }) => ({
    x: reference,
    y: errorPercentSpan,
    series,
    shape: direction,
  }));
}

/** Mean error of each test point, one line for each direction. */
export function meanRows(series: PhaseName, phase: PhaseRecord): readonly Row[] {
  return phase.points.flatMap(({ reference, up, down }) => [
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

/** Part of the greatest distance below which a difference is the rounding of binary numbers: as in the verdict. */
const roundingShare = 1e-12;

/** The farther end of the range from zero: no distance is stored better than to a part of it. */
export function farthestFromZero({ instrument: { rangeLower, rangeUpper } }: CalibrationRecord): number {
  return Math.max(Math.abs(rangeLower), Math.abs(rangeUpper));
}

/** Whether a mark lies outside the band. A reading's verdict may speak of its controller value, the mark does not. */
export function isOutside({ errorDistance, toleranceLow, toleranceHigh }: DrawnReading, magnitude: number): boolean {
  const slack = roundingShare * magnitude;
  return errorDistance < toleranceLow - slack || errorDistance > toleranceHigh + slack;
}
