import quantile from "@stdlib/stats-base-dists-chisquare-quantile";

/**
 * Gives the value that a chi-squared quantity stays at or below with a given probability: the limit of a fit's misfit.
 *
 * @param probability one-sided probability, 0 < p < 1, no unit
 * @param degreesOfFreedom > 0, finite, fractions allowed
 * @returns the quantile, no unit, > 0; at least 12 digits for 1 to 1000 degrees of freedom and p from 0.005 to 0.999
 * Faults: `RangeError` when the probability is not strictly between 0 and 1, when the degrees of freedom are not
 * positive and finite, or when no positive number of that size exists in double precision.
 * Source: ISO/TS 28037:2010, clauses 6 and 7 (95 % limit of chi-squared); computed by @stdlib.
 * @example chiSquaredQuantile(0.95, 4) // 9.487729036781154
 */
export function chiSquaredQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`probability ${probability} is not between 0 and 1`);
  if (!(degreesOfFreedom > 0 && Number.isFinite(degreesOfFreedom)))
    throw new RangeError(`${degreesOfFreedom} degrees of freedom, they must be positive and finite`);
  const value = quantile(probability, degreesOfFreedom);
  if (!(value > 0 && Number.isFinite(value)))
    throw new RangeError(`no quantile in double precision at ${degreesOfFreedom} degrees of freedom`);
  return value;
}
