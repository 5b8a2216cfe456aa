import { sum } from "simple-statistics";
import { centre, sumOfProducts } from "./centre.ts";

/** One standard deviation for all groups, and how many degrees of freedom stand behind it. */
export type PooledStandardDeviation = { readonly standardDeviation: number; readonly degreesOfFreedom: number };

/**
 * Gives the one standard deviation that repeated readings at several places share.
 *
 * @param groups array of groups, each an array of finite numbers in one unit; the groups may differ in length and in
 * mean, and a group of fewer than two values tells nothing about scatter and adds nothing
 * @returns the pooled standard deviation (same unit, >= 0, about 14 digits) and its degrees of freedom, the sum of
 * n - 1 over the groups that count
 * Faults: `RangeError` when no group has two values (no degrees of freedom) or a value is not finite.
 * Source: GUM (JCGM 100:2008) 4.2.4, a pooled estimate: the mean of the variances weighted by their degrees of
 * freedom.
 * @example pooledStandardDeviation([[1, 3], [10, 12, 14], [7]]) // { standardDeviation: 1.8257418583505538, degreesOfFreedom: 3 }
 */
export function pooledStandardDeviation(groups: readonly (readonly number[])[]): PooledStandardDeviation {
  const repeated = groups.filter((group) => group.length >= 2);
  const degreesOfFreedom = sum(repeated.map((group) => group.length - 1));
  if (degreesOfFreedom === 0) throw new RangeError("no group holds two values, so there are no degrees of freedom");
  const squares = repeated.map((group) => {
    const { deviations } = centre(group);
    return sumOfProducts(deviations, deviations);
  });
  return { standardDeviation: Math.sqrt(sum(squares) / degreesOfFreedom), degreesOfFreedom };
}
