import { isInside } from "../units/is-inside.ts";
import { spanOf } from "./range.ts";

/** What grouping needs to know of a reading. */
export type PlacedReading = { point?: number | undefined; reference: number };

/** One test point: its nominal position and which readings (by index) were taken there. */
export type TestPoint = { nominal: number; members: readonly number[] };

/** Share of the span that parts two test points, and that one test point may not exceed. */
export const gapShare = 0.02;

/**
 * Gathers the readings of one phase into test points, in the order of rising distance.
 *
 * Where every reading names its nominal position, readings of one position belong together. Otherwise a new
 * test point begins where the sorted references leave a gap of more than 2 % of span.
 *
 * @param readings n readings of one phase, distances in one unit
 * @param span of the range, in that unit, above zero
 * @returns test points; `nominal` is the column `point`, or the mean reference where that is absent
 * Source: own choice, written down in the record with the figures that rest on it.
 * @example testPointsOf([{ reference: 0 }, { reference: 50 }, { reference: 0.4 }], 100) // members [0, 2] and [1]
 */
export function testPointsOf(readings: readonly PlacedReading[], span: number): readonly TestPoint[] {
  const named = readings.every(({ point }) => point !== undefined);
  const sorted = readings
    .map((reading, index) => ({ reading, index }))
    .sort((one, other) => position(one.reading) - position(other.reading));
  const groups: (typeof sorted)[] = [];
  for (const placed of sorted) {
    const { reading } = placed;
    const last = groups.at(-1)?.at(-1)?.reading;
    const begins =
      last === undefined ||
      (named ? reading.point !== last.point : reading.reference - last.reference > gapShare * span);
    if (begins) groups.push([placed]);
    else groups.at(-1)?.push(placed);
  }
  return groups.map((group) => ({
    nominal: (named ? group[0]?.reading.point : undefined) ?? meanReference(group.map(({ reading }) => reading)),
    members: group.map(({ index }) => index).sort((a, b) => a - b),
  }));

  function position(reading: PlacedReading): number {
    return named ? (reading.point ?? reading.reference) : reading.reference;
  }
}

/**
 * The test points that are wider than 2 % of span because their readings run together.
 *
 * @param points of `testPointsOf`
 * @param readings the readings that they were made of
 * @param span of the range
 * @returns those test points that no one can call one position; none where every reading names its position
 * Source: own choice, the same 2 % as above.
 * @example widePoints(testPointsOf([0, 1.5, 3].map((reference) => ({ reference })), 100), …, 100).length // 1
 */
export function widePoints(
  points: readonly TestPoint[],
  readings: readonly PlacedReading[],
  span: number,
): readonly TestPoint[] {
  if (readings.every(({ point }) => point !== undefined)) return [];
  return points.filter(({ members }) => {
    let least = Number.POSITIVE_INFINITY;
    let greatest = Number.NEGATIVE_INFINITY;
    for (const member of members) {
      const { reference = Number.NaN } = readings[member] ?? {};
      least = Math.min(least, reference);
      greatest = Math.max(greatest, reference);
    }
    return greatest - least > gapShare * span;
  });
}

function meanReference(group: readonly PlacedReading[]): number {
  const first = group[0]?.reference ?? 0;
  return first + group.reduce((sum, { reference }) => sum + (reference - first), 0) / group.length;
}

/**
 * How many places of the range test points stand for: those within 2 % of span of each other are one, by their names and
 * by where they were read.
 *
 * @param points nominal positions in any order, distances in one unit
 * @param references reference distances of their readings, in any order
 * @param span of the range, in that unit, above zero
 * @returns the most of them of which no two are within 2 % of span of each other: of names or of references, the fewer
 * Source: own choice, the same 2 % as above.
 * @example placesOf([1, 1.01, 1.02, 1.03, 6], [1, 1.01, 1.02, 1.03, 6], 5) // 2
 */
export function placesOf(points: readonly number[], references: readonly number[], span: number): number {
  return Math.min(placesApart(points, span), placesApart(references, span));
}

function placesApart(points: readonly number[], span: number): number {
  let places = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (const point of points.toSorted((one, other) => one - other)) {
    if (isInside(point - last, { low: null, high: gapShare * span }, Math.max(Math.abs(point), span))) continue;
    places += 1;
    last = point;
  }
  return places;
}

/**
 * The nominal positions of test points that divide a range evenly, both ends among them.
 *
 * @param range in one unit
 * @param count of test points, at least 2
 * @returns positions from the lower end to the upper
 * Source: common practice: 0, 25, 50, 75, 100 % of the range for five points.
 * @example evenPoints({ rangeLower: 200, rangeUpper: 1000 }, 5) // [200, 400, 600, 800, 1000]
 */
export function evenPoints(range: { rangeLower: number; rangeUpper: number }, count: number): readonly number[] {
  const step = spanOf(range) / (count - 1);
  return Array.from({ length: count }, (_, place) => Number((range.rangeLower + step * place).toPrecision(12)));
}
