import type { Direction } from "../../model/calibration-words.ts";
import { mean } from "../../numeric/mean.ts";

/** One reading as the figures of the error curve take it; the error is in percent of span. */
export type CurveReading = {
  point: number;
  reference: number;
  error: number;
  direction: Direction;
  cycle: number;
};

/** One test point of the error curve; a direction that was not taken is null. */
export type CurvePoint = {
  point: number;
  reference: number;
  up: number | null;
  down: number | null;
  mean: number;
};

/**
 * The error curve: for each test point the mean error of the rising and of the falling readings over the cycles.
 *
 * a(j, up), a(j, down); a(j) is the mean of the two where both exist, else the one that does.
 *
 * @param readings at least one, grouped by `point` (the nominal position, distance); errors in percent of span
 * @returns test points by rising distance; `reference` is the mean of the references there
 * @throws RangeError where there are no readings
 * Source: IEC 61298-2:2008 (averages of rising and falling); from memory which figures rest on averages.
 * @example errorCurve([{ point: 0, reference: 0, error: 1, direction: "rising", cycle: 1 },
 *   { point: 0, reference: 0, error: 3, direction: "falling", cycle: 1 }])[0].mean // 2
 */
export function errorCurve(readings: readonly CurveReading[]): readonly CurvePoint[] {
  if (readings.length === 0) throw new RangeError("errorCurve: requires at least one reading");
  return readingsByPoint(readings).map(([point, group]) => {
    const up = meanError(group, "rising");
    const down = meanError(group, "falling");
    return {
      point,
      reference: mean(group.map(({ reference }) => reference)),
      up,
      down,
      mean: up !== null && down !== null ? (up + down) / 2 : ((up ?? down) as number),
    };
  });
}

/**
 * The readings of each test point, by rising distance.
 *
 * @param readings in any order
 * @returns pairs of nominal position and its readings, in the order in which they were given
 * Source: own choice.
 * @example readingsByPoint([{ point: 5, reference: 5, error: 1, direction: "rising", cycle: 1 },
 *   { point: 0, reference: 0, error: 2, direction: "rising", cycle: 1 }]).map(([point]) => point) // [0, 5]
 */
export function readingsByPoint(readings: readonly CurveReading[]): readonly [number, readonly CurveReading[]][] {
  const groups = new Map<number, CurveReading[]>();
  for (const reading of readings) {
    const group = groups.get(reading.point);
    if (group === undefined) groups.set(reading.point, [reading]);
    else group.push(reading);
  }
  return [...groups].sort(([left], [right]) => left - right);
}

function meanError(group: readonly CurveReading[], direction: Direction): number | null {
  const errors = group.filter((reading) => reading.direction === direction).map(({ error }) => error);
  return errors.length === 0 ? null : mean(errors);
}
