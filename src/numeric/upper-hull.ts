/** A point of the plane. */
export type PlanePoint = { readonly abscissa: number; readonly ordinate: number };

/**
 * Gives the upper convex hull of some points: the corners of a string stretched over them from left to right.
 *
 * @param points array of n >= 0 points with finite coordinates, any order; of several at one abscissa only the highest
 * counts
 * @returns the corners from left to right, abscissas strictly rising and slopes strictly falling; every point lies on
 * or under the string. The coordinates are those given, none is computed
 * Faults: none.
 * Source: A. M. Andrew, "Another efficient algorithm for convex hulls in two dimensions", Inf. Process. Lett. 9, 216
 * (1979).
 * @example upperHull([0, 2, 1, 0].map((ordinate, abscissa) => ({ abscissa, ordinate }))).map(({ abscissa }) =>
 *   abscissa) // [0, 1, 3]
 */
export function upperHull(points: readonly PlanePoint[]): readonly PlanePoint[] {
  const hull: PlanePoint[] = [];
  for (const point of highestPerAbscissa(points)) {
    while (hull.length >= 2 && !turnsDown(hull.at(-2)!, hull.at(-1)!, point)) hull.pop();
    hull.push(point);
  }
  return hull;
}

function highestPerAbscissa(points: readonly PlanePoint[]): readonly PlanePoint[] {
  const fromLeft = [...points].sort((a, b) => a.abscissa - b.abscissa || b.ordinate - a.ordinate);
  return fromLeft.filter((point, index) => index === 0 || point.abscissa > fromLeft[index - 1]!.abscissa);
}

function turnsDown(first: PlanePoint, middle: PlanePoint, last: PlanePoint): boolean {
  const firstRise = (middle.ordinate - first.ordinate) * (last.abscissa - first.abscissa);
  const wholeRise = (last.ordinate - first.ordinate) * (middle.abscissa - first.abscissa);
  return firstRise > wholeRise;
}
