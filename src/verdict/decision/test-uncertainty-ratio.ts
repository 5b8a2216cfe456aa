import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";

/**
 * Gives the test uncertainty ratio: how many times the expanded uncertainty goes into the tolerance.
 *
 * (T2 − T1) / (2U), which is T/U where the limits are −T and T.
 *
 * @param limits T1 and T2, lower and upper limit of the error, distance; T1 <= T2
 * @param expandedUncertainty U of the error, distance, > 0, coverage about 95 %
 * @returns the ratio, no unit, >= 0; under 4 the record says so
 * Faults: `RangeError` for a limit or uncertainty that is not finite, U <= 0, or a lower limit above the upper.
 * Source: ANSI/NCSL Z540.3-2006, 3.11 (span of the tolerance over twice the 95 % expanded uncertainty); the same as the
 * measurement capability index C_m of JCGM 106:2012, 7.6.3.
 * @example testUncertaintyRatio({ low: -9, high: 9 }, 3) // 3
 */
export function testUncertaintyRatio({ low, high }: ToleranceLimits, expandedUncertainty: number): number {
  if (!Number.isFinite(low) || !Number.isFinite(high) || low > high)
    throw new RangeError(`limits of ${low} and ${high} are not usable`);
  if (!(expandedUncertainty > 0 && Number.isFinite(expandedUncertainty)))
    throw new RangeError(`an expanded uncertainty of ${expandedUncertainty} is not a number above 0`);
  return (high - low) / (2 * expandedUncertainty);
}
