import type { FixedPoint } from "./fit-line-through.ts";
import { requireFinite, requirePoints } from "./require-finite.ts";

/** The line through a fixed point that stays closest to all other points at once. */
export type MinimaxSlope = { readonly slope: number; readonly greatestDeviation: number };

type Ray = { readonly run: number; readonly rise: number };

/**
 * Gives the slope, of a line through one fixed point, whose greatest absolute deviation from the points is the least.
 *
 * With runs t = x − x0 and rises d = y − y0 (both turned over where t < 0, which leaves the deviation as it is), the
 * deviation of one point, |d − m·t|, is a V over the slope m. The V's of two points cross between their tips at
 * m = (dj + dk)/(tj + tk), at the height |dj·tk − dk·tj|/(tj + tk), which is the best that those two allow. By Helly's
 * theorem on the line the worst pair decides for all points: n² crossings, no iteration and no tolerance.
 *
 * @param abscissas array of n >= 1 finite numbers, any order, on either side of the point or at it; not all at it
 * @param ordinates array of n finite numbers, same order
 * @param point the fixed point, in the units of the lists
 * @returns the slope (of which there is only one), and the greatest deviation of any point from that line, unit of the
 * ordinates, >= 0; points at the fixed abscissa count in it although no slope can bring them nearer
 * Faults: `RangeError` when lengths differ, a list is empty, a value is not finite, or all abscissas are at the point.
 * Source: own choice of algorithm; E. Helly, Jahresber. Dtsch. Math.-Ver. 32, 175 (1923). The line is that of
 * zero-based linearity, ANSI/ISA-51.1-1979 (R1993).
 * @example minimaxSlopeThrough([1, 3], [2, 3], { abscissa: 0, ordinate: 0 }) // slope 1.25, greatestDeviation 0.75
 */
export function minimaxSlopeThrough(
  abscissas: readonly number[],
  ordinates: readonly number[],
  point: FixedPoint,
): MinimaxSlope {
  requirePoints(abscissas, ordinates, 1);
  requireFinite("fixed point", [point.abscissa, point.ordinate]);
  const rays = abscissas.map((abscissa, index) => ({
    run: abscissa - point.abscissa,
    rise: ordinates[index]! - point.ordinate,
  }));
  const slope = decidingSlope(rays.filter((ray) => ray.run !== 0).map(turnedForward));
  const deviations = rays.map((ray) => Math.abs(ray.rise - slope * ray.run));
  return { slope, greatestDeviation: deviations.reduce((greatest, deviation) => Math.max(greatest, deviation)) };
}

function turnedForward(ray: Ray): Ray {
  return ray.run < 0 ? { run: -ray.run, rise: -ray.rise } : ray;
}

function decidingSlope(rays: readonly Ray[]): number {
  const first = rays[0];
  if (first === undefined) throw new RangeError("all abscissas are at the fixed point, so no slope is determined");
  let slope = first.rise / first.run;
  let worst = 0;
  for (const [index, left] of rays.entries()) {
    for (const right of rays.slice(index + 1)) {
      const runs = left.run + right.run;
      const deviation = Math.abs(left.rise * right.run - right.rise * left.run) / runs;
      if (deviation > worst) {
        worst = deviation;
        slope = (left.rise + right.rise) / runs;
      }
    }
  }
  return slope;
}
