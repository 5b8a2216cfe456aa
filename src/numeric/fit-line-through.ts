import { sumOfProducts } from "./centre.ts";
import { requirePoints } from "./require-finite.ts";

/** A place that a line must pass through. */
export type FixedPoint = { readonly abscissa: number; readonly ordinate: number };

/** A least-squares line through a fixed point. */
export type LineThroughFit = {
  readonly n: number;
  readonly slope: number;
  /** Null where one reading leaves nothing to judge the scatter by; so is the next. */
  readonly slopeStdError: number | null;
  readonly residualStdDev: number | null;
  readonly degreesOfFreedom: number;
  /** About the fixed point, not about the mean; null where every ordinate equals that of the fixed point. */
  readonly rSquared: number | null;
};

/**
 * Fits the straight line through one fixed point that makes the sum of squared ordinate deviations least.
 *
 * @param abscissas array of n >= 1 finite numbers, at least one apart from the fixed point; taken as free of error
 * @param ordinates array of n finite numbers, same order
 * @param point the fixed point, units of the lists; the origin where it is left out
 * @returns slope, its standard error, residual standard deviation on n - 1 degrees of freedom (one constant is
 * fitted), and the uncentred R² = 1 - (sum of squared residuals) / (sum of squared rises from the fixed point); 13
 * digits on NIST's NoInt1 and NoInt2
 * Faults: `RangeError` when lengths differ, a list is empty, a value is not finite, or all abscissas are at the point.
 * Source: NIST StRD NoInt1 and NoInt2, https://www.itl.nist.gov/div898/strd/; the certified R² there is the uncentred
 * one. A centred R² compares with a line that the fixed point forbids and may come out negative.
 * @example fitLineThrough([4, 5, 6], [3, 4, 4]) // slope 0.7272727272727273, rSquared 0.993348115299335 (NIST NoInt2)
 */
export function fitLineThrough(
  abscissas: readonly number[],
  ordinates: readonly number[],
  point: FixedPoint = { abscissa: 0, ordinate: 0 },
): LineThroughFit {
  requirePoints(abscissas, ordinates, 1);
  const runs = abscissas.map((abscissa) => abscissa - point.abscissa);
  const rises = ordinates.map((ordinate) => ordinate - point.ordinate);
  const runSumOfSquares = sumOfProducts(runs, runs);
  if (runSumOfSquares === 0) throw new RangeError("all abscissas are at the fixed point, so no slope is determined");
  const slope = sumOfProducts(runs, rises) / runSumOfSquares;
  const residuals = rises.map((rise, index) => rise - slope * runs[index]!);
  const residualSumOfSquares = sumOfProducts(residuals, residuals);
  const riseSumOfSquares = sumOfProducts(rises, rises);
  const degreesOfFreedom = abscissas.length - 1;
  const residualVariance = degreesOfFreedom === 0 ? null : residualSumOfSquares / degreesOfFreedom;
  return {
    n: abscissas.length,
    slope,
    slopeStdError: residualVariance === null ? null : Math.sqrt(residualVariance / runSumOfSquares),
    residualStdDev: residualVariance === null ? null : Math.sqrt(residualVariance),
    degreesOfFreedom,
    rSquared: riseSumOfSquares === 0 ? null : 1 - residualSumOfSquares / riseSumOfSquares,
  };
}
