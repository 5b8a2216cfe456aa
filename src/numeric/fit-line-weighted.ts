import { sum } from "simple-statistics";
import { sumOfProducts } from "./centre.ts";
import { requireFinite, requirePoints } from "./require-finite.ts";

/** A line with stated uncertainties: what was known of the points before the fit, carried to the line. */
export type UncertainLine = {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeStandardUncertainty: number;
  readonly interceptStandardUncertainty: number;
  /** Covariance of intercept and slope. */
  readonly covariance: number;
};

/** A line fitted to points whose uncertainties are known, with the test of whether the two agree. */
export type WeightedLineFit = UncertainLine & {
  readonly n: number;
  /** Sum of squares of the weighted residuals: about as large as the degrees of freedom where all is well. */
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
};

/**
 * Fits a straight line to points whose ordinates have their own standard uncertainties (weighted least squares).
 *
 * The uncertainties of the line come from those given, never from the scatter: compare chi-squared with the degrees of
 * freedom to see whether the scatter believes them.
 *
 * @param abscissas array of n >= 2 finite numbers, not all equal; taken as exact
 * @param ordinates array of n finite numbers, same order
 * @param ordinateUncertainties array of n standard uncertainties > 0, unit of the ordinates; errors uncorrelated
 * @returns slope, intercept, their standard uncertainties and covariance, chi-squared (no unit) and n - 2 degrees of
 * freedom; good to about 13 digits
 * Faults: `RangeError` when lengths differ, n < 2, an uncertainty is not positive, a value is not finite, or all
 * abscissas are equal.
 * Source: ISO/TS 28037:2010 clause 6, its steps in their order (weights 1/u, weighted means, G²).
 * @example fitLineWeighted([1, 2, 3], [2, 4, 7], [0.5, 0.5, 1]) // slope 2.333333333333333, chiSquared 0.4444444444444444
 */
export function fitLineWeighted(
  abscissas: readonly number[],
  ordinates: readonly number[],
  ordinateUncertainties: readonly number[],
): WeightedLineFit {
  requirePoints(abscissas, ordinates, 2);
  requireUncertainties(ordinateUncertainties, abscissas.length);
  if (abscissas.every((abscissa) => abscissa === abscissas[0]))
    throw new RangeError("all abscissas are equal, so no line is determined");
  const weights = ordinateUncertainties.map((uncertainty) => 1 / (uncertainty * uncertainty));
  const across = weightedCentre(abscissas, weights);
  const upward = weightedCentre(ordinates, weights);
  const weightedRuns = across.deviations.map((run, index) => weights[index]! * run);
  const runSumOfSquares = sumOfProducts(weightedRuns, across.deviations);
  const slope = sumOfProducts(weightedRuns, upward.deviations) / runSumOfSquares;
  const residuals = upward.deviations.map((rise, index) => rise - slope * across.deviations[index]!);
  return {
    n: abscissas.length,
    slope,
    intercept: upward.mean - slope * across.mean,
    ...lineUncertainties(across.mean, sum(weights), runSumOfSquares),
    chiSquared: sumOfProducts(
      residuals,
      residuals.map((residual, index) => weights[index]! * residual),
    ),
    degreesOfFreedom: abscissas.length - 2,
  };
}

/**
 * Splits a list into its weighted mean and the deviations from it.
 *
 * @param values array of n >= 1 finite numbers
 * @param weights array of n weights > 0
 * @returns mean (unit of the values) and n deviations whose weighted sum is 0 but for rounding
 * Faults: none; the callers have checked the lists.
 * Source: ISO/TS 28037:2010 clause 6 (g0, h0); the rounding of the mean is taken off again as in `centre`.
 * @example weightedCentre([1, 4], [2, 1]) // { mean: 2, deviations: [-1, 2] }
 */
export function weightedCentre(values: readonly number[], weights: readonly number[]) {
  const totalWeight = sum([...weights]);
  const roundedMean = sumOfProducts(values, weights) / totalWeight;
  const offsets = values.map((value) => value - roundedMean);
  const correction = sumOfProducts(offsets, weights) / totalWeight;
  return { mean: roundedMean + correction, deviations: offsets.map((offset) => offset - correction) };
}

/**
 * Gives the standard uncertainties and covariance of a weighted line from its sums.
 *
 * @param abscissaMean weighted mean of the abscissas (g0 / F² terms of the standard)
 * @param totalWeight sum of the weights, F²
 * @param runSumOfSquares weighted sum of squares of the abscissas about that mean, G²
 * @returns u(intercept), u(slope) and their covariance
 * Faults: none.
 * Source: ISO/TS 28037:2010 clause 6, u²(a) = 1/F² + g0²/G², u²(b) = 1/G², cov(a, b) = −g0/G².
 * @example lineUncertainties(2, 4, 1) // interceptStandardUncertainty 2.0615528128088303, covariance -2
 */
export function lineUncertainties(abscissaMean: number, totalWeight: number, runSumOfSquares: number) {
  return {
    slopeStandardUncertainty: Math.sqrt(1 / runSumOfSquares),
    interceptStandardUncertainty: Math.sqrt(1 / totalWeight + (abscissaMean * abscissaMean) / runSumOfSquares),
    covariance: -abscissaMean / runSumOfSquares,
  };
}

function requireUncertainties(uncertainties: readonly number[], count: number): void {
  requireFinite("uncertainties", uncertainties);
  if (uncertainties.length !== count) throw new RangeError(`${uncertainties.length} uncertainties for ${count} points`);
  if (uncertainties.some((uncertainty) => uncertainty <= 0)) throw new RangeError("an uncertainty is not positive");
}
