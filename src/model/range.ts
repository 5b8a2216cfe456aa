/** The reference distances at which the output is meant to be at its lower and at its upper end, in one unit. */
export type Range = { rangeLower: number; rangeUpper: number };

/**
 * Span of the range: S = U − L.
 *
 * @param range both ends
 * @returns distance, above zero for a range that was checked
 * Source: ANSI/ISA-51.1-1979 (R1993), "span".
 * @example spanOf({ rangeLower: 200, rangeUpper: 2000 }) // 1800
 */
export function spanOf({ rangeLower, rangeUpper }: Range): number {
  return rangeUpper - rangeLower;
}

/**
 * The greatest distance from zero within the range: max(|L|, |U|). What storing a decimal number may change of a distance
 * is a part of this, however short the range.
 *
 * @param range both ends
 * @returns distance, above zero for a range that was checked
 * Source: IEEE 754-2019: a double holds a number to 1.1e-16 of itself.
 * @example greatestDistanceOf({ rangeLower: -300, rangeUpper: 200 }) // 300
 */
export function greatestDistanceOf({ rangeLower, rangeUpper }: Range): number {
  return Math.max(Math.abs(rangeLower), Math.abs(rangeUpper));
}
