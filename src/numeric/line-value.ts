import type { LineFit } from "./fit-line.ts";

/**
 * Reads a fitted line at an abscissa.
 *
 * @param fit a line of `fitLine`
 * @param abscissa finite number, unit of the abscissas of the fit
 * @returns the ordinate of the line there, unit of the ordinates; reckoned from the means and not from the intercept,
 * so that no digits are lost when abscissa 0 is far from the readings
 * Faults: none.
 * Source: GUM (JCGM 100:2008) H.3.1, equation (H.12), with the mean abscissa as the reference t0.
 * @example lineValue(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4) // 9.5
 */
export function lineValue(fit: LineFit, abscissa: number): number {
  return fit.ordinateMean + fit.slope * (abscissa - fit.abscissaMean);
}

/**
 * Gives the standard uncertainty of a fitted line at an abscissa, as the scatter of the readings tells it.
 *
 * @param fit a line of `fitLine`
 * @param abscissa finite number, unit of the abscissas of the fit; taken as exact
 * @returns s · √(1/n + (x − mean)²/Sxx), unit of the ordinates, > 0 and least at the mean abscissa; of the line, not of
 * one further reading. Null where the fit has no degrees of freedom (two points)
 * Faults: none.
 * Source: GUM (JCGM 100:2008) H.3.4, equation (H.15), which reduces to this form.
 * @example lineStandardUncertainty(fitLine([0, 1, 2, 3], [1, 3, 4, 8]), 4) // 1.161895003862225
 */
export function lineStandardUncertainty(fit: LineFit, abscissa: number): number | null {
  if (fit.residualStdDev === null) return null;
  const distance = abscissa - fit.abscissaMean;
  return fit.residualStdDev * Math.sqrt(1 / fit.n + (distance * distance) / fit.abscissaSumOfSquares);
}
