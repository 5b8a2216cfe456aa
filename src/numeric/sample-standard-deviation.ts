import { centre, sumOfProducts } from "./centre.ts";

/**
 * Gives the standard deviation of repeated readings, as an estimate for all readings of that kind (divisor n - 1).
 *
 * @param values array of n >= 2 finite numbers in any order, all in one unit
 * @returns the sample standard deviation, same unit, >= 0; about 14 digits of what the given doubles hold. Readings
 * with a large offset have lost digits before they arrive here: 10000000.1 stands for 0.1 only to 1e-9.
 * Faults: `RangeError` for fewer than two values or a value that is not finite.
 * Source: GUM (JCGM 100:2008) 4.2.2, equation (4).
 * @example sampleStandardDeviation([10000001, 10000003, 10000002]) // 1 (NIST StRD NumAcc1)
 */
export function sampleStandardDeviation(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError(`${values.length} values, a standard deviation needs at least 2`);
  const { deviations } = centre(values);
  return Math.sqrt(sumOfProducts(deviations, deviations) / (values.length - 1));
}
