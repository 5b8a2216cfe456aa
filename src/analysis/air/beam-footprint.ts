import { type Figure, notDetermined } from "../figures/figure.ts";

/**
 * Width of the beam at a distance: W = 2 · d · tan(α/2). A target that is narrower lets part of the beam pass.
 *
 * @param distance d from the sensor, in the instrument's unit, 0 or more
 * @param beamAngleDegrees α, full opening angle, above 0 to 180
 * @returns width in the unit of the distance; not determined for a beam of 180°, which has no edge
 * Source: geometry of a cone; makers of level radars give their tables of beam diameters by the same formula.
 * @example beamFootprint(8, 4) // 0.5587
 */
export function beamFootprint(distance: number, beamAngleDegrees: number): Figure<number> {
  if (beamAngleDegrees >= 180) return notDetermined("a beam of 180° has no edge");
  return 2 * distance * Math.tan(((beamAngleDegrees / 2) * Math.PI) / 180);
}
