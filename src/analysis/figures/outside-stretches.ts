import { greatestDistanceOf, type Range, spanOf } from "../../model/range.ts";
import { isInside } from "../../units/is-inside.ts";
/** The error at one test point with the limits there; all in distance. */
export type LimitedError = { reference: number; error: number; low: number; high: number };

/** A test point of an error curve in percent of span, with the limits of the error in distance. */
export type LimitedPoint = {
  reference: number;
  up: number | null;
  down: number | null;
  mean: number;
  toleranceLow: number;
  toleranceHigh: number;
};

/** A part of the range, both ends included. */
export type Stretch = { from: number; to: number };

/**
 * The parts of the range where the error lies outside its limits, taking error and limits as straight between
 * neighbouring test points.
 *
 * @param points by rising distance; nothing is said of distances beyond the outermost
 * @returns stretches by rising distance, none touching another; one point alone outside gives a stretch up to where the
 *   lines to its neighbours cross the limit
 * Source: own choice; straight lines between test points, as a calibration curve is commonly read.
 * @example outsideStretches([{ reference: 0, error: 0, low: -1, high: 1 }, { reference: 100, error: 4, low: -1,
 *   high: 1 }]) // [{ from: 25, to: 100 }]
 */
export function outsideStretches(points: readonly LimitedError[]): readonly Stretch[] {
  const segments = points.slice(1).flatMap((end, index) => {
    const start = points[index] as LimitedError;
    return [
      partAboveZero(start.reference, end.reference, start.error - start.high, end.error - end.high),
      partAboveZero(start.reference, end.reference, start.low - start.error, end.low - end.error),
    ];
  });
  return joined(segments.filter((stretch) => stretch !== undefined));
}

/**
 * The parts of the range where a loop is outside its tolerance on the way up or on the way down.
 *
 * @param points of one phase, by rising distance; a direction that was not read has the mean
 * @param range of the instrument; on a limit is inside, `isInside`
 * @returns as `outsideStretches`
 * Source: as `outsideStretches`; outside in either direction is outside (own choice).
 * @example outsideEitherWay([{ reference: 0, up: 0, down: null, mean: 0, toleranceLow: -1, toleranceHigh: 1 },
 *   { reference: 100, up: 4, down: null, mean: 4, toleranceLow: -1, toleranceHigh: 1 }],
 *   { rangeLower: 0, rangeUpper: 100 }) // [{ from: 25, to: 100 }]
 */
export function outsideEitherWay(points: readonly LimitedPoint[], range: Range): readonly Stretch[] {
  const distancePerPercent = spanOf(range) / 100;
  const curve = (side: "up" | "down") =>
    points.map(({ reference, toleranceLow: low, toleranceHigh: high, mean, ...sides }) => {
      const found = (sides[side] ?? mean) * distancePerPercent;
      const isIn = isInside(found, { low, high }, greatestDistanceOf(range));
      return { reference, error: isIn ? Math.min(Math.max(found, low), high) : found, low, high };
    });
  return joined([...outsideStretches(curve("up")), ...outsideStretches(curve("down"))]);
}

/**
 * Stretches as few as say the same: those that overlap or touch become one.
 *
 * @param stretches in any order
 * @returns by rising distance, apart from each other
 * Source: own choice.
 * @example joined([{ from: 5, to: 9 }, { from: 0, to: 5 }]) // [{ from: 0, to: 9 }]
 */
export function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const result: Stretch[] = [];
  for (const stretch of stretches.toSorted((one, other) => one.from - other.from)) {
    const last = result.at(-1);
    if (last === undefined || stretch.from > last.to) result.push({ ...stretch });
    else last.to = Math.max(last.to, stretch.to);
  }
  return result;
}

/** Where the straight line from one excess to the other is above zero. */
function partAboveZero(from: number, to: number, excessFrom: number, excessTo: number): Stretch | undefined {
  if (excessFrom <= 0 && excessTo <= 0) return undefined;
  if (excessFrom > 0 && excessTo > 0) return { from, to };
  const crossing = from + ((to - from) * excessFrom) / (excessFrom - excessTo);
  return excessFrom > 0 ? { from, to: crossing } : { from: crossing, to };
}
