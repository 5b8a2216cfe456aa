import { type CurvePoint, type CurveReading, errorCurve } from "./error-curve.ts";
import { type Figure, isDetermined, notDetermined } from "./figure.ts";

/** A difference between rising and falling, in percent of span, and the test point where it is greatest. */
export type GreatestDifference = { percentSpan: number; point: number };

/**
 * Hysteresis: the greatest difference between the rising and the falling error at one test point.
 *
 * max over j of |a(j, up) − a(j, down)|, of the means over the cycles.
 *
 * @param curve test points; means in percent of span
 * @returns the difference, at least 0, in percent of span, with its test point (nominal position, distance)
 * Source: IEC 61298-2:2008, "hysteresis", from memory that it is taken from the averages.
 * @example hysteresis([{ point: 5, reference: 5, up: 0.25, down: 0.5, mean: 0.375 }]) // { percentSpan: 0.25, point: 5 }
 */
export function hysteresis(curve: readonly CurvePoint[]): Figure<GreatestDifference> {
  let worst: GreatestDifference | undefined;
  for (const { point, up, down } of curve) {
    if (up === null || down === null) continue;
    const percentSpan = Math.abs(up - down);
    if (worst === undefined || percentSpan > worst.percentSpan) worst = { percentSpan, point };
  }
  return worst ?? notDetermined("no test point was read in both directions");
}

/**
 * Hysteresis within one cycle: the greatest difference between rising and falling in any single run out and back.
 *
 * @param readings errors in percent of span, with their cycle
 * @returns the difference, at least 0, in percent of span, its test point and its cycle
 * Source: ANSI/ISA-51.1-1979 (R1993), "hysteresis" (one full traverse; the dead band is not taken off).
 * @example hysteresisWithinOneCycle([{ point: 5, reference: 5, error: 0.25, direction: "rising", cycle: 2 },
 *   { point: 5, reference: 5, error: 0.5, direction: "falling", cycle: 2 }]) // { percentSpan: 0.25, point: 5, cycle: 2 }
 */
export function hysteresisWithinOneCycle(
  readings: readonly CurveReading[],
): Figure<GreatestDifference & { cycle: number }> {
  let worst: (GreatestDifference & { cycle: number }) | undefined;
  for (const cycle of [...new Set(readings.map((reading) => reading.cycle))].sort((a, b) => a - b)) {
    const greatest = hysteresis(errorCurve(readings.filter((reading) => reading.cycle === cycle)));
    if (isDetermined(greatest) && (worst === undefined || greatest.percentSpan > worst.percentSpan)) {
      worst = { ...greatest, cycle };
    }
  }
  return worst ?? notDetermined("no cycle has a test point that was read in both directions");
}
