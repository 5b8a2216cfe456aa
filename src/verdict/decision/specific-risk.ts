import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { normalCumulative } from "../../numeric/normal-distribution.ts";

/**
 * Gives the probability that the true error lies outside the tolerance, given the error that was measured.
 *
 * 1 − [Φ((T2 − e)/u) − Φ((T1 − e)/u)], reckoned as the sum of the two tails, Φ((e − T2)/u) + Φ((T1 − e)/u), so that
 * a risk of one in a million million keeps its digits.
 *
 * @param error e, distance, indicated minus reference
 * @param limits T1 and T2, lower and upper limit of the error, distance
 * @param standardUncertainty u of the error, distance, > 0; the true error is taken as normal about the measured one
 * @returns probability, 0 to 1; about 14 digits. For a pass it is the risk of a false pass, for a fail its complement is
 * that of a false fail
 * Faults: `RangeError` for an error, limit or uncertainty that is not finite, u <= 0, or a lower limit above the upper.
 * Source: JCGM 106:2012, 7.4 and 9.3.2 (specific consumer's risk).
 * @example specificRisk(2, { low: -2, high: 2 }, 0.5) // 0.5 (the tail beyond −2 adds 6e-16)
 */
export function specificRisk(error: number, { low, high }: ToleranceLimits, standardUncertainty: number): number {
  if (![error, low, high].every(Number.isFinite) || low > high)
    throw new RangeError(`an error of ${error} or limits of ${low} and ${high} are not usable`);
  if (!(standardUncertainty > 0 && Number.isFinite(standardUncertainty)))
    throw new RangeError(`a standard uncertainty of ${standardUncertainty} is not a number above 0`);
  return normalCumulative((error - high) / standardUncertainty) + normalCumulative((low - error) / standardUncertainty);
}
