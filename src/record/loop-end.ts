import type { JudgedPointRecord, PhaseRecord, ReadingRecord } from "./record-schema.ts";

/** How far into the loop a word goes: the first stage that was read, or everything up to and with a later one. */
export type JudgedPart = PhaseRecord["endOf"];

/**
 * The test points by which a phase is decided: those of the end of the loop, and of the sensor where nothing behind it
 * was read.
 *
 * @param phase of a record
 * @returns judged points by rising distance
 * Source: own choice: the plant acts on what the last stage gives.
 * @example decidingPoints({ points: [], endOf: "sensor" }) // []
 */
export function decidingPoints({
  points,
  endPoints = [],
}: Pick<PhaseRecord, "points" | "endPoints">): readonly JudgedPointRecord[] {
  const atEnd = new Set(endPoints.map(({ point }) => point));
  return [...points.filter(({ point }) => !atEnd.has(point)), ...endPoints].toSorted(
    (one, other) => one.point - other.point,
  );
}

/**
 * The judged point that stands for a phase: the one with the worst statement, then the greatest risk.
 *
 * @param phase of a record
 * @returns the point, or undefined where none was judged
 * Source: as `isWorse`.
 * @example worstPointOf({ points: [], worstPoint: null }) // undefined
 */
export function worstPointOf({
  worstPoint,
  points,
  endPoints = [],
}: Pick<PhaseRecord, "points" | "endPoints" | "worstPoint">): JudgedPointRecord | undefined {
  if (worstPoint === null) return undefined;
  return (worstPoint.of === "sensor" ? points : endPoints)[worstPoint.index];
}

/**
 * The error of one reading where the loop ends: at the last stage that was read of it.
 *
 * @param reading of a record
 * @returns error in distance and the part of the loop that it is of; undefined where nothing was read
 * Source: own choice, as above.
 * @example endError({ errorDistance: 1, inputCardErrorDistance: -20 }) // { of: "input card", errorDistance: -20 }
 */
export function endError(
  reading: Pick<
    ReadingRecord,
    "errorDistance" | "wiringErrorDistance" | "inputCardErrorDistance" | "loopErrorDistance"
  >,
): { of: JudgedPart; errorDistance: number } | undefined {
  const { errorDistance, wiringErrorDistance, inputCardErrorDistance, loopErrorDistance } = reading;
  if (loopErrorDistance !== undefined) return { of: "controller", errorDistance: loopErrorDistance };
  if (inputCardErrorDistance !== undefined) return { of: "input card", errorDistance: inputCardErrorDistance };
  if (wiringErrorDistance !== undefined) return { of: "wiring", errorDistance: wiringErrorDistance };
  return errorDistance === undefined ? undefined : { of: "sensor", errorDistance };
}

/**
 * How many readings of a phase reported a fault inside the range, where a distance was asked for.
 *
 * @param phase of a record
 * @returns number of readings that fail and are in no figure, those that stand at an end of the signal not counted
 * Source: `analyseReadings`.
 * @example faultsIn({ readings: [] }) // 0
 */
export function faultsIn({ readings }: Pick<PhaseRecord, "readings">): number {
  return readings.filter(
    ({ verdict, leftOut, railed }) => verdict === "fail" && leftOut !== undefined && railed === undefined,
  ).length;
}
