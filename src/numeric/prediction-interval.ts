import type { LineFit } from "./fit-line.ts";
import { lineStandardUncertainty, lineValue } from "./line-value.ts";
import { studentTQuantile } from "./student-t-quantile.ts";

/** A value with the two ends of its interval. */
export type ValueInterval = { value: number; low: number; high: number };

/**
 * Where one further reading at an abscissa is expected, as the fitted line and the scatter about it tell.
 *
 * @param fit a line of `fitLine`, n >= 3
 * @param abscissa finite number, unit of the abscissas of the fit; taken as exact
 * @param confidence two-sided, 0 < c < 1, no unit
 * @returns value of the line and both ends, unit of the ordinates; both ends are the value where all points lie on the line
 * Faults: `RangeError` where the fit has no degrees of freedom (two points), or for a confidence outside its range.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.1.2: ŷ ± t(n − 2) · √(s² + s_line²).
 * @example predictionInterval(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4) // value 9.5, low 3.0460, high 15.9540
 */
export function predictionInterval(fit: LineFit, abscissa: number, confidence = 0.95): ValueInterval {
  if (fit.residualStdDev === null) throw new RangeError("two points predict no interval");
  return predictionBand(fit, intervalFactor(fit, confidence))(abscissa);
}

/**
 * The same for many abscissas, with a factor that was found once.
 *
 * @param fit a line of `fitLine`, n >= 3
 * @param factor of `intervalFactor`
 * @returns what `predictionInterval` gives, for any abscissa
 * Faults: `RangeError` where the fit has no degrees of freedom (two points).
 * Source: as `predictionInterval`.
 * @example predictionBand(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4.302652729749464)(4) // value 9.5, low 3.0460, high 15.9540
 */
export function predictionBand(fit: LineFit, factor: number): (abscissa: number) => ValueInterval {
  const { residualStdDev } = fit;
  if (residualStdDev === null) throw new RangeError("two points predict no interval");
  return (abscissa) => {
    const reach = factor * Math.hypot(residualStdDev, lineStandardUncertainty(fit, abscissa) ?? 0);
    return around(lineValue(fit, abscissa), reach);
  };
}

/**
 * The slope of a fitted line with its confidence interval.
 *
 * @param fit a line of `fitLine`, n >= 3
 * @param factor of `intervalFactor`; for 95 % where left out
 * @returns slope and both ends, ordinate unit per abscissa unit
 * Faults: `RangeError` where the fit has no degrees of freedom (two points).
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.4.3.1; Student's t with n − 2 degrees of freedom.
 * @example slopeInterval(fitLine([0, 1, 2, 3], [1, 3, 4, 8])) // value 2.2, low 0.3745, high 4.0255
 */
export function slopeInterval(fit: LineFit, factor?: number): ValueInterval {
  if (fit.slopeStdError === null) throw new RangeError("two points give a slope no interval");
  return around(fit.slope, (factor ?? intervalFactor(fit)) * fit.slopeStdError);
}

/**
 * By how many standard uncertainties the intervals of a fitted line reach: the quantile of Student's t.
 *
 * @param fit a line of `fitLine`, n >= 3, or one whose scatter has other degrees of freedom
 * @param confidence two-sided, 0 < c < 1, no unit
 * @returns factor, no unit
 * Faults: `RangeError` where the fit has no degrees of freedom (two points), or for a confidence outside its range.
 * Source: JCGM 100:2008, G.3.
 * @example intervalFactor(fitLine([0, 1, 2, 3], [1, 3, 4, 8])) // 4.302652729749464
 */
export function intervalFactor({ degreesOfFreedom }: LineFit, confidence = 0.95): number {
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`${confidence} is no confidence`);
  return studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
}

function around(value: number, reach: number): ValueInterval {
  return { value, low: value - reach, high: value + reach };
}
