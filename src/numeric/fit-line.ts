import { centre, sumOfProducts } from "./centre.ts";
import { requirePoints } from "./require-finite.ts";

/** A least-squares straight line with what is known about it; units follow from the abscissas and ordinates given. */
export type LineFit = {
  readonly n: number;
  readonly slope: number;
  /** The line at abscissa 0, which may lie far outside the readings: use `lineValue` to read the line. */
  readonly intercept: number;
  /** Null where two points leave nothing to judge the scatter by; so are the next three. */
  readonly slopeStdError: number | null;
  readonly interceptStdError: number | null;
  /** Covariance of intercept and slope. */
  readonly covariance: number | null;
  readonly residualStdDev: number | null;
  readonly degreesOfFreedom: number;
  /** Null where all ordinates are equal: there is no scatter to explain. */
  readonly rSquared: number | null;
  readonly abscissaMean: number;
  readonly ordinateMean: number;
  /** Sum of squares of the abscissas about their mean. */
  readonly abscissaSumOfSquares: number;
};

/**
 * Fits the straight line that makes the sum of squared ordinate deviations least (ordinary least squares).
 *
 * Both lists are centred before any product is formed: raw sums lose digits at large offsets (x near 1e6 leaves 2 or 3).
 *
 * @param abscissas array of n >= 2 finite numbers, not all equal, any order; taken as free of error
 * @param ordinates array of n finite numbers, same order; equal scatter assumed at every abscissa
 * @returns slope and intercept with standard errors, covariance, residual standard deviation (n - 2 degrees of
 * freedom) and R²; 13 digits on NIST's straight line Norris. With n = 2 the errors are null, never 0
 * Faults: `RangeError` when lengths differ, n < 2, all abscissas are equal, or a value is not finite.
 * Source: GUM (JCGM 100:2008) H.3.2, equations (H.13a) to (H.13f), in centred form.
 * @example fitLine([0, 1, 2, 3], [1, 3, 4, 8]) // slope 2.2, intercept 0.7, residualStdDev 0.948683298050514
 */
export function fitLine(abscissas: readonly number[], ordinates: readonly number[]): LineFit {
  requirePoints(abscissas, ordinates, 2);
  const across = centre(abscissas);
  const upward = centre(ordinates);
  const abscissaSumOfSquares = sumOfProducts(across.deviations, across.deviations);
  if (isConstant(abscissas) || abscissaSumOfSquares === 0)
    throw new RangeError("all abscissas are equal, so no line is determined");
  const slope = sumOfProducts(across.deviations, upward.deviations) / abscissaSumOfSquares;
  const residuals = upward.deviations.map((rise, index) => rise - slope * across.deviations[index]!);
  const residualSumOfSquares = sumOfProducts(residuals, residuals);
  const ordinateSumOfSquares = sumOfProducts(upward.deviations, upward.deviations);
  return {
    n: abscissas.length,
    slope,
    intercept: upward.mean - slope * across.mean,
    ...scatter(residualSumOfSquares, { n: abscissas.length, abscissaMean: across.mean, abscissaSumOfSquares }),
    rSquared: isConstant(ordinates) ? null : 1 - residualSumOfSquares / ordinateSumOfSquares,
    abscissaMean: across.mean,
    ordinateMean: upward.mean,
    abscissaSumOfSquares,
  };
}

/**
 * The same line where its scatter is known better than from its own points, as from several lines together.
 *
 * @param fit a line of `fitLine`
 * @param scatter standard deviation about the line, unit of the ordinates, and its degrees of freedom, fractions allowed
 * @returns the line with that scatter, and the standard errors that follow from it
 * Faults: none.
 * Source: GUM (JCGM 100:2008) H.3.2, equations (H.13c) to (H.13f), with a pooled s in the place of the line's own (4.2.4).
 * @example lineWithScatter(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), { standardDeviation: 1, degreesOfFreedom: 9 }).slopeStdError
 *   // 0.4472135954999579
 */
export function lineWithScatter(
  fit: LineFit,
  { standardDeviation, degreesOfFreedom }: { standardDeviation: number; degreesOfFreedom: number },
): LineFit {
  return { ...fit, degreesOfFreedom, ...standardErrors(standardDeviation ** 2, fit) };
}

type Abscissas = Pick<LineFit, "n" | "abscissaMean" | "abscissaSumOfSquares">;

function scatter(residualSumOfSquares: number, abscissas: Abscissas) {
  const degreesOfFreedom = abscissas.n - 2;
  if (degreesOfFreedom === 0)
    return { degreesOfFreedom, residualStdDev: null, slopeStdError: null, interceptStdError: null, covariance: null };
  return { degreesOfFreedom, ...standardErrors(residualSumOfSquares / degreesOfFreedom, abscissas) };
}

function standardErrors(residualVariance: number, { n, abscissaMean, abscissaSumOfSquares }: Abscissas) {
  const slopeVariance = residualVariance / abscissaSumOfSquares;
  return {
    residualStdDev: Math.sqrt(residualVariance),
    slopeStdError: Math.sqrt(slopeVariance),
    interceptStdError: Math.sqrt(residualVariance / n + abscissaMean * abscissaMean * slopeVariance),
    covariance: -abscissaMean * slopeVariance,
  };
}

// Compared as given: the sum of squares of equal values such as 0.1 need not come out as exactly 0.
function isConstant(values: readonly number[]): boolean {
  return values.every((value) => value === values[0]);
}
