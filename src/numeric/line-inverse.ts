import type { UncertainLine } from "./fit-line-weighted.ts";

/** An abscissa found from an ordinate. */
export type InverseReading = { readonly abscissa: number; readonly standardUncertainty: number };

/**
 * Gives the abscissa at which a line has a given ordinate: what was measured, from what was indicated.
 *
 * u²(x) = [u²(a) + x²·u²(b) + 2x·cov(a, b) + u²(y)] / b², with a the intercept and b the slope.
 *
 * @param line slope (not 0), intercept, their standard uncertainties and covariance; any fit of this folder that has them
 * @param ordinate finite number, unit of the ordinates of the line
 * @param ordinateStandardUncertainty >= 0, same unit; uncorrelated with the line
 * @returns abscissa and its standard uncertainty (to first order), unit of the abscissas. The uncertainty loses digits
 * where abscissa 0 is far from the readings that the line was fitted to: shift the abscissas before the fit
 * Faults: `RangeError` when the slope is 0, a value is not finite, or an uncertainty is negative.
 * Source: ISO/TS 28037:2010, prediction of X from a measured Y; the same formula in NIST/SEMATECH e-Handbook 2.3.6.7,
 * https://www.itl.nist.gov/div898/handbook/mpc/section3/mpc3673.htm.
 * @example lineInverse({ slope: 2, intercept: 1, slopeStandardUncertainty: 0.1, interceptStandardUncertainty: 0.3,
 * covariance: -0.02 }, 5, 0.4) // abscissa 2, standardUncertainty 0.22912878474779197
 */
export function lineInverse(
  line: UncertainLine,
  ordinate: number,
  ordinateStandardUncertainty: number,
): InverseReading {
  requireLine(line, ordinate, ordinateStandardUncertainty);
  const abscissa = (ordinate - line.intercept) / line.slope;
  const ofSlope = abscissa * line.slopeStandardUncertainty;
  const ofLine = line.interceptStandardUncertainty ** 2 + ofSlope ** 2 + 2 * abscissa * line.covariance;
  // A covariance matrix allows no negative value here; rounding at a large offset can leave one of about -1e-16.
  const variance = Math.max(0, ofLine) + ordinateStandardUncertainty ** 2;
  return { abscissa, standardUncertainty: Math.sqrt(variance) / Math.abs(line.slope) };
}

function requireLine(line: UncertainLine, ordinate: number, ordinateStandardUncertainty: number): void {
  const uncertainties = [line.slopeStandardUncertainty, line.interceptStandardUncertainty, ordinateStandardUncertainty];
  const values = [line.slope, line.intercept, line.covariance, ordinate, ...uncertainties];
  if (!values.every(Number.isFinite)) throw new RangeError("a value of the line or the ordinate is not finite");
  if (uncertainties.some((uncertainty) => uncertainty < 0)) throw new RangeError("an uncertainty is negative");
  if (line.slope === 0) throw new RangeError("the line is level, so no abscissa belongs to an ordinate");
}
