/** Limits of a number; a side that is not limited is null. */
export type NumberLimits = { low: number | null; high: number | null };

/** Part of a number below which a difference is how binary numbers store a decimal one, and no measurement. */
export const storedDigits = 1e-12;

/**
 * Whether a number keeps its limits; on a limit is inside, and how a decimal number is stored does not decide.
 *
 * Compared at full precision: only a difference under 10⁻¹² of the greatest number involved does not count. An error is
 * the difference of two distances, and far from zero these are stored no better than to 10⁻¹⁶ of themselves, however
 * short the range: there the distance is the magnitude, not the limit.
 *
 * @param value in the unit of the limits
 * @param limits either side or both
 * @param magnitude greatest number that the value came of, same unit; the limit itself where left out
 * @returns true for a number inside, on a limit, and beyond one by no more than that part
 * Source: IEEE 754-2019: a double holds a number to 1.1e-16 of itself; 10⁻¹² is own choice, with room for a sum.
 * @example isInside(12, { low: 12, high: 30 }) // true
 */
export function isInside(value: number, { low, high }: NumberLimits, magnitude?: number): boolean {
  const slack = (limit: number) => storedDigits * (magnitude ?? Math.abs(limit));
  return (low === null || value >= low - slack(low)) && (high === null || value <= high + slack(high));
}
