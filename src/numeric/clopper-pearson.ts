import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";

/**
 * The two-sided confidence interval of a rate that was observed as so many successes in so many trials, by the binomial
 * distribution itself: conservative, also for few trials and for rates near 0 and 1.
 *
 * @param successes whole number from 0 to the trials
 * @param trials whole number, at least 1
 * @param confidence two-sided, 0 < c < 1, no unit
 * @returns low and high end of the rate, 0 to 1; at least 9 digits
 * @throws RangeError for counts that are none, or a confidence outside
 * Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404; by quantiles of the beta distribution (@stdlib).
 * @example clopperPearson(3, 20) // { low: 0.03207094, high: 0.37892683 }
 */
export function clopperPearson(successes: number, trials: number, confidence = 0.95): { low: number; high: number } {
  const isCount = Number.isInteger(successes) && Number.isInteger(trials) && successes >= 0 && trials >= 1;
  if (!isCount || successes > trials) throw new RangeError(`clopperPearson: ${successes} of ${trials} is no rate`);
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`clopperPearson: ${confidence} is no confidence`);
  const tail = (1 - confidence) / 2;
  return {
    low: successes === 0 ? 0 : betaQuantile(tail, successes, trials - successes + 1),
    high: successes === trials ? 1 : betaQuantile(1 - tail, successes + 1, trials - successes),
  };
}
