import { sum } from "simple-statistics";
import { requireFinite } from "./require-finite.ts";

/**
 * Gives the arithmetic mean of some readings of one quantity.
 *
 * @param values array of n >= 1 finite numbers in any order, all in one unit
 * @returns the mean, same unit; good to the last digit or two of a double, because the sum is compensated
 * Faults: `RangeError` for an empty list or a value that is not finite.
 * Source: GUM (JCGM 100:2008) 4.2.1, equation (3); the sum by Neumaier's variant of Kahan's compensation
 * (Z. Angew. Math. Mech. 54, 39 (1974)), as simple-statistics does it.
 * @example mean([10000001, 10000003, 10000002]) // 10000002 (NIST StRD NumAcc1)
 */
export function mean(values: readonly number[]): number {
  if (values.length === 0) throw new RangeError("the mean of no values is not defined");
  requireFinite("values", values);
  return sum([...values]) / values.length;
}
