import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import { chiSquaredQuantile } from "./chi-squared-quantile.ts";

/** Above this chi-squared takes over: own choice, the quantiles differ by under 1 part in 10⁵ of themselves. */
const unlimitedFrom = 1e6;

/**
 * Gives the value that the ratio of two variances of one size stays at or below with a given probability.
 *
 * From the beta distribution, F = (ν2/ν1) · x/(1 − x), where 1 − x is a quantile of its own and not a difference: close
 * to 1 it would lose its digits. With unlimited degrees of freedom below, chi-squared over its degrees of freedom.
 *
 * @param probability one-sided probability, 0 < p < 1, no unit
 * @param above degrees of freedom of the variance above the line, > 0, finite, fractions allowed
 * @param below degrees of freedom of the variance below the line, > 0, fractions allowed; may be Infinity
 * @returns the quantile, no unit, > 0; about 10 digits for 1 to 1000 degrees of freedom
 * Faults: `RangeError` when the probability is not strictly between 0 and 1, or degrees of freedom are not positive.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.6.2 and 26.5; computed by @stdlib.
 * @example fQuantile(0.95, 4, 10) // 3.478049690765229
 */
export function fQuantile(probability: number, above: number, below: number): number {
  if (!(above > 0 && Number.isFinite(above) && below > 0))
    throw new RangeError(`${above} and ${below} degrees of freedom, they must be positive`);
  if (below > unlimitedFrom) return chiSquaredQuantile(probability, above) / above;
  if (!(probability > 0 && probability < 1)) throw new RangeError(`probability ${probability} is not between 0 and 1`);
  const inside = betaQuantile(probability, above / 2, below / 2);
  const rest = betaQuantile(1 - probability, below / 2, above / 2);
  return (below / above) * (inside / rest);
}
