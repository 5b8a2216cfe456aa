import type { LineFit } from "./fit-line.ts";
import { lineStandardUncertainty } from "./line-value.ts";
import { studentTQuantile } from "./student-t-quantile.ts";

/**
 * Half the width of the interval in which one further ordinate at an abscissa is to be expected.
 *
 * @param fit a line of `fitLine` through at least three points
 * @param abscissa finite number, unit of the abscissas of the fit; taken as exact
 * @param confidence two-sided, 0 < c < 1, no unit
 * @returns t · s · √(1 + 1/n + (x − mean)²/Sxx), unit of the ordinates; 0 where all points lie on the line
 * Faults: `RangeError` for a fit of two points, which shows no scatter, or a confidence outside.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.1.2; D. C. Montgomery, Introduction to Linear Regression
 *   Analysis, equation (2.45).
 * @example predictionHalfWidth(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4) // 6.453979
 */
export function predictionHalfWidth(fit: LineFit, abscissa: number, confidence = 0.95): number {
  const uncertaintyOfLine = lineStandardUncertainty(fit, abscissa);
  if (uncertaintyOfLine === null || fit.residualStdDev === null)
    throw new RangeError("predictionHalfWidth: two points show no scatter");
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`predictionHalfWidth: ${confidence} is no confidence`);
  const coverageFactor = studentTQuantile((1 + confidence) / 2, fit.degreesOfFreedom);
  return coverageFactor * Math.hypot(fit.residualStdDev, uncertaintyOfLine);
}
