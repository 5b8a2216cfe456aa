import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import type { Budget } from "../../analysis/uncertainty/budget.ts";
import { chanceOutside } from "../../numeric/chance-outside.ts";
import { normalCumulative } from "../../numeric/normal-distribution.ts";

/** A measured error with the uncertainty that it was measured with; distance. */
type MeasuredError = {
  error: number;
  budget: Pick<Budget, "combinedUncertainty" | "coverageFactor">;
  /** Standard uncertainty that both directions share. */
  common: number;
};

/**
 * The standard uncertainty that a risk is reckoned with: u, widened by k/2 where few degrees of freedom are behind it.
 *
 * The normal distribution about the measured error then leaves outside ±U what U says; k under 2, of a dominant
 * rectangle, narrows nothing.
 *
 * @param budget its u, distance, and k
 * @returns u · max(1, k/2), distance
 * Source: JCGM 106:2012, 7.4, takes the distribution that U rests on; own choice of the normal one with the same U.
 * @example riskUncertainty({ combinedUncertainty: 1, coverageFactor: 2.87 }) // 1.435
 */
export function riskUncertainty({
  combinedUncertainty,
  coverageFactor,
}: Pick<Budget, "combinedUncertainty" | "coverageFactor">): number {
  return combinedUncertainty * Math.max(1, coverageFactor / 2);
}

/**
 * The probability that at a test point the true error of at least one direction lies outside the tolerance.
 *
 * Of one direction `specificRisk`; of two the risk of the greater, which is more than that of either: given what both
 * share, the standards and the cycles, each deviates on its own.
 *
 * @param measured mean error of each direction that was read, with its budget
 * @param limits T1 and T2, distance
 * @returns probability, 0 to 1
 * Faults: `RangeError` where there is no direction, or as `specificRisk`.
 * Source: JCGM 106:2012, 7.4; `chanceOutside` for what the directions share.
 * @example riskOfDirections([{ error: 2, budget: { combinedUncertainty: 0.5, coverageFactor: 2 }, common: 0 }, { error: 2,
 *   budget: { combinedUncertainty: 0.5, coverageFactor: 2 }, common: 0 }], { low: -9, high: 2 }) // 0.75: each is outside
 *   with one half
 */
export function riskOfDirections(measured: readonly MeasuredError[], limits: ToleranceLimits): number {
  const [only] = measured;
  if (only === undefined) throw new RangeError("riskOfDirections: requires a direction");
  if (measured.length === 1) return specificRisk(only.error, limits, riskUncertainty(only.budget));
  return chanceOutside(
    measured.map(({ error, budget, common }) => {
      const widened = riskUncertainty(budget) / budget.combinedUncertainty;
      const own = Math.sqrt(Math.max(0, budget.combinedUncertainty ** 2 - common ** 2));
      return {
        ...{ low: limits.low - error, high: limits.high - error, count: 1 },
        ...{ common: common * widened, own: own * widened },
      };
    }),
  );
}

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
