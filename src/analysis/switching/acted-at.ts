import type { TripDirection } from "../../model/calibration-words.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";
import { type AnalogPoint, analogErrorAt } from "./analog-error-at.ts";

/** The distance at which a controller acts on a loop with an error, and the uncertainty of it; both in distance. */
export type ActedAt = { distance: number; expandedUncertainty: number };

/**
 * The true distance at which a loop shows a distance: x with x + e(x) = d, e on the straight line between the mean errors of
 * two test points.
 *
 * @param points of one phase, by rising distance; errors in percent of span
 * @param shown d, the distance that the controller's limit stands for
 * @param direction in which the target moves when the limit is reached
 * @param span of the range, distance
 * @returns x and the greater U of its two neighbours; the x nearest to d where there are several; or why there is none
 * Source: identity, on `analogErrorAt`; nothing is extrapolated.
 * @example actedAt([{ reference: 0, up: 2, down: 2, mean: 2, expandedUncertainty: 1 }, { reference: 1000, up: 2, down: 2,
 *   mean: 2, expandedUncertainty: 1 }], 500, "recede", 1000) // { distance: 480, expandedUncertainty: 1 }
 */
export function actedAt(
  points: readonly AnalogPoint[],
  shown: number,
  direction: TripDirection,
  span: number,
): Figure<ActedAt> {
  const places = points.flatMap(({ reference }) => {
    const error = analogErrorAt(points, reference, direction, span);
    return isDetermined(error)
      ? [{ reference, shown: reference + error.errorDistance, u: error.expandedUncertainty }]
      : [];
  });
  const crossings = places.slice(1).flatMap((far, place): ActedAt[] => {
    const near = places[place] as (typeof places)[number];
    const width = far.shown - near.shown;
    const part = width === 0 ? Number.NaN : (shown - near.shown) / width;
    if (!(part >= 0 && part <= 1)) return [];
    const distance = near.reference + part * (far.reference - near.reference);
    return [{ distance, expandedUncertainty: Math.max(near.u, far.u) }];
  });
  const [nearest] = crossings.toSorted(
    (one, other) => Math.abs(one.distance - shown) - Math.abs(other.distance - shown),
  );
  return nearest ?? notDetermined("no two test points lie on either side of it");
}
