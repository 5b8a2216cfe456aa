/**
 * Gives the coverage factor of a symmetric trapezoidal quantity: half-width of its interval over its standard deviation.
 *
 * With half-width 1 the density is 1/(1 + β) on the top, |x| <= β, and falls to 0 along a straight line. An interval ±x
 * inside the top holds 2x/(1 + β); beyond it the two tails hold (1 − x)²/(1 − β²). Solved for x, and divided by the
 * standard deviation √((1 + β²)/6):
 * k = p(1 + β)/2 / √((1 + β²)/6) for p <= 2β/(1 + β), otherwise k = (1 − √((1 − p)(1 − β²))) / √((1 + β²)/6).
 *
 * @param edgeParameter β, width of the top over width of the base, 0 (triangular) to 1 (rectangular). Two independent
 * rectangular quantities of half-widths a1 and a2 add up to one with β = |a1 − a2|/(a1 + a2)
 * @param probability coverage probability p, two-sided, 0 < p < 1
 * @returns k, no unit; about 15 digits
 * Faults: `RangeError` for an edge parameter outside 0 to 1 or a probability not strictly between 0 and 1.
 * Source: EA-4/02 M:2022, S10.13 (its k for p = 0.95); derived anew as above. Density: JCGM 101:2008, 6.4.4.
 * @example trapezoidalCoverageFactor(1, 0.95) // 1.6454482671904334
 */
export function trapezoidalCoverageFactor(edgeParameter: number, probability: number): number {
  if (!(edgeParameter >= 0 && edgeParameter <= 1))
    throw new RangeError(`edge parameter ${edgeParameter} is not from 0 to 1`);
  if (!(probability > 0 && probability < 1)) throw new RangeError(`probability ${probability} is not between 0 and 1`);
  return halfWidthOf(edgeParameter, probability) / Math.sqrt((1 + edgeParameter ** 2) / 6);
}

function halfWidthOf(edgeParameter: number, probability: number): number {
  if (probability <= (2 * edgeParameter) / (1 + edgeParameter)) return (probability * (1 + edgeParameter)) / 2;
  return 1 - Math.sqrt((1 - probability) * (1 - edgeParameter ** 2));
}
