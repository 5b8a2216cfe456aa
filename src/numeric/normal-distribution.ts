import standardCumulative from "@stdlib/stats-base-dists-normal-cdf";
import standardQuantile from "@stdlib/stats-base-dists-normal-quantile";

/**
 * Gives the probability that a standard normal quantity lies at or below a value.
 *
 * @param value any number, in standard deviations from the mean; -Infinity and Infinity are allowed
 * @returns probability, 0 to 1, no unit; about 14 digits, far in the lower tail too (it is not reckoned as 1 minus)
 * Faults: `RangeError` when the value is NaN.
 * Source: GUM (JCGM 100:2008) C.2.14; computed by @stdlib, whose error function is that of FreeBSD's msun. Library
 * tables of a few decimals are not good enough for a stated risk.
 * @example normalCumulative(1.96) // 0.9750021048517795
 */
export function normalCumulative(value: number): number {
  if (Number.isNaN(value)) throw new RangeError("the value is not a number");
  return standardCumulative(value, 0, 1);
}

/**
 * Gives the value that a standard normal quantity stays at or below with a given probability.
 *
 * @param probability one-sided probability, 0 < p < 1, no unit; for a two-sided 95 % give 0.975
 * @returns value in standard deviations from the mean, negative under p = 0.5; about 15 digits in the middle, 12 at
 * p = 1e-6 and 6 at p = 1e-12
 * Faults: `RangeError` when the probability is not strictly between 0 and 1.
 * Source: GUM (JCGM 100:2008) table G.1 (two-sided); computed by @stdlib.
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`probability ${probability} is not between 0 and 1`);
  return standardQuantile(probability, 0, 1);
}
