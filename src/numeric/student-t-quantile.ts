import quantile from "@stdlib/stats-base-dists-t-quantile";
import { normalQuantile } from "./normal-distribution.ts";

// Above this Student's t and the normal quantile agree to 15 digits; the library gives 0 from 1e17 and NaN at Infinity.
const GREATEST_DEGREES_OF_FREEDOM = 1e15;

/**
 * Gives the value of Student's t that a quantity stays at or below with a given probability: the coverage factor.
 *
 * @param probability one-sided probability, 0 < p < 1, no unit; for a two-sided 95.45 % give 0.97725
 * @param degreesOfFreedom > 0, fractions allowed (Welch–Satterthwaite gives them), Infinity for a normal quantity
 * @returns the quantile, no unit, negative under p = 0.5; at least 13 digits for 1 to 1e5 degrees of freedom
 * Faults: `RangeError` when the probability is not strictly between 0 and 1, when the degrees of freedom are not
 * positive, or when the quantile is beyond what a double holds (under about 0.01 degrees of freedom).
 * Source: GUM (JCGM 100:2008) G.3 and table G.2; computed by @stdlib.
 * @example studentTQuantile(0.97725, 10) // 2.283681613299642
 */
export function studentTQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`probability ${probability} is not between 0 and 1`);
  if (!(degreesOfFreedom > 0)) throw new RangeError(`${degreesOfFreedom} degrees of freedom, they must be positive`);
  if (degreesOfFreedom > GREATEST_DEGREES_OF_FREEDOM) return normalQuantile(probability);
  const value = quantile(probability, degreesOfFreedom);
  if (!Number.isFinite(value)) throw new RangeError(`no finite quantile at ${degreesOfFreedom} degrees of freedom`);
  return value;
}
