import { type Direction, directions } from "../model/calibration.ts";
import { pooledStandardDeviation } from "../numeric/pooled-standard-deviation.ts";
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
 *   its degrees of freedom
 * Source: IEC 61298-2:2008, "repeatability" (individual readings, one direction); ISO 5725-2 for the pooling.
 * @example repeatability(…0.10, 0.14, 0.12 rising at 5…) // 0.04 at 5, rising; pooled 0.02, 2 degrees of freedom
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
  if (groups.length === 0) return notDetermined("one cycle only");
  const pooled = pooledStandardDeviation(groups.map(({ errors }) => errors));
  const spreads = groups.map(({ point, direction, errors }) => ({
    point,
    direction,
    percentSpan: Math.max(...errors) - Math.min(...errors),
  }));
  const widest = spreads.reduce((worst, spread) => (spread.percentSpan > worst.percentSpan ? spread : worst));
  return { ...widest, pooledStdDev: pooled.standardDeviation, degreesOfFreedom: pooled.degreesOfFreedom };
}
