import { type Direction, directions } from "../../model/calibration-words.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { pooledStandardDeviation } from "../../numeric/pooled-standard-deviation.ts";
import { type CurveReading, readingsByPoint } from "./error-curve.ts";
import { type Figure, notDetermined } from "./figure.ts";

export type Repeatability = {
  percentSpan: number;
  point: number;
  direction: Direction;
  pooledStdDev: number;
  degreesOfFreedom: number;
};

/**
 * Repeatability: how far readings of the same test point, taken in the same direction, lie apart over the cycles.
 *
 * max over points and directions of (greatest − least error); with it the standard deviation pooled over all of them,
 * s = √(Σ (n − 1) s² / Σ (n − 1)).
 *
 * @param readings errors in percent of span
 * @returns the widest spread in percent of span, where it is, the pooled standard deviation in percent of span and
 *   its degrees of freedom; or the reason why nothing was repeated
 * Source: IEC 61298-2:2008, "repeatability" (individual readings, one direction); ISO 5725-2 for the pooling.
 * @example repeatability([{ point: 5, reference: 5, error: 0.25, direction: "rising", cycle: 1 },
 *   { point: 5, reference: 5, error: 0.75, direction: "rising", cycle: 2 },
 *   { point: 5, reference: 5, error: 0.5, direction: "rising", cycle: 3 }])
 *   // { percentSpan: 0.5, point: 5, direction: "rising", pooledStdDev: 0.25, degreesOfFreedom: 2 }
 */
export function repeatability(readings: readonly CurveReading[]): Figure<Repeatability> {
  const groups = readingsByPoint(readings)
    .flatMap(([point, group]) =>
      directions.map((direction) => ({
        point,
        direction,
        errors: group.filter((reading) => reading.direction === direction).map(({ error }) => error),
      })),
    )
    .filter(({ errors }) => errors.length >= 2);
  if (groups.length === 0) return notDetermined(whyNotRepeated(readings));
  const pooled = pooledStandardDeviation(groups.map(({ errors }) => errors));
  const spreads = groups.map(({ point, direction, errors }) => ({
    point,
    direction,
    percentSpan: greatestOf(errors) - leastOf(errors),
  }));
  const widest = spreads.reduce((worst, spread) => (spread.percentSpan > worst.percentSpan ? spread : worst));
  return { ...widest, pooledStdDev: pooled.standardDeviation, degreesOfFreedom: pooled.degreesOfFreedom };
}

function whyNotRepeated(readings: readonly CurveReading[]): string {
  if (readings.length === 0) return "no usable reading";
  const cycles = new Set(readings.map(({ cycle }) => cycle)).size;
  return cycles === 1 ? "one cycle only" : "no test point was read twice in the same direction";
}
