import type { TripDirection } from "../../model/calibration-words.ts";
import { gapShare } from "../../model/test-points.ts";
import { type Figure, isDetermined, notDetermined } from "../figures/figure.ts";

/** A test point of the analog output: mean errors in percent of span, U of the worse direction in distance. */
export type AnalogPoint = {
  reference: number;
  up: number | null;
  down: number | null;
  mean: number;
  expandedUncertainty: number;
};

/** Error of the analog value at one place, indicated minus reference, and its expanded uncertainty; both in distance. */
export type AnalogError = { errorDistance: number; expandedUncertainty: number };

/**
 * The error of the analog value at a distance between two test points, on the straight line between their mean errors.
 *
 * A target that comes nearer makes the distance fall, so an approach is compared with the falling readings and a recede
 * with the rising ones; where a neighbour was not read in that direction, both neighbours give the mean of the two.
 *
 * @param points of one phase, by rising distance
 * @param distance in the unit of the references
 * @param direction in which the target moved
 * @param span of the range, distance
 * @returns error and the greater U of the two neighbours, distance; or the reason why there is none
 * Source: own choice; an outermost test point stands for places within 2 % of span beyond it, and nothing is extrapolated.
 * @example analogErrorAt([{ reference: 0, up: 1, down: 2, mean: 1.5, expandedUncertainty: 0.3 },
 *   { reference: 100, up: 3, down: 6, mean: 4.5, expandedUncertainty: 0.4 }], 25, "approach", 200)
 *   // { errorDistance: 6, expandedUncertainty: 0.4 }
 */
export function analogErrorAt(
  points: readonly AnalogPoint[],
  distance: number,
  direction: TripDirection,
  span: number,
): Figure<AnalogError> {
  const reach = gapShare * span;
  const below = points.findLast(({ reference }) => reference <= distance) ?? nearEnough(points[0], distance, reach);
  const above = points.find(({ reference }) => reference >= distance) ?? nearEnough(points.at(-1), distance, reach);
  if (below === undefined || above === undefined) return notDetermined("the set point lies outside the test points");
  const errorOf = directedError([below, above], direction);
  const width = above.reference - below.reference;
  const part = width === 0 ? 0 : (distance - below.reference) / width;
  const percentSpan = errorOf(below) + part * (errorOf(above) - errorOf(below));
  return {
    errorDistance: (percentSpan * span) / 100,
    expandedUncertainty: Math.max(below.expandedUncertainty, above.expandedUncertainty),
  };
}

/**
 * The error of the analog value at a distance, whichever way the target came: the one farther from zero.
 *
 * @param points of one phase, by rising distance
 * @param distance in the unit of the references
 * @param span of the range, distance
 * @returns error and its U; undefined where the place lies outside the test points
 * Source: as `analogErrorAt`.
 * @example worseAnalogErrorAt([{ reference: 0, up: 1, down: -2, mean: -0.5, expandedUncertainty: 0.3 }], 0, 200)
 *   // { errorDistance: -4, expandedUncertainty: 0.3 }
 */
export function worseAnalogErrorAt(
  points: readonly AnalogPoint[],
  distance: number,
  span: number,
): AnalogError | undefined {
  const errors = (["approach", "recede"] as const)
    .map((direction) => analogErrorAt(points, distance, direction, span))
    .filter(isDetermined);
  return errors.toSorted((one, other) => Math.abs(other.errorDistance) - Math.abs(one.errorDistance))[0];
}

/** An outermost test point stands for a place beside it as closely as readings of one point lie together. */
function nearEnough(point: AnalogPoint | undefined, distance: number, reach: number): AnalogPoint | undefined {
  return point !== undefined && Math.abs(point.reference - distance) <= reach ? point : undefined;
}

function directedError(neighbours: readonly AnalogPoint[], direction: TripDirection): (point: AnalogPoint) => number {
  const side = direction === "approach" ? "down" : "up";
  const isReadSo = neighbours.every((point) => point[side] !== null);
  return (point) => (isReadSo ? (point[side] ?? point.mean) : point.mean);
}
