import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";

/** Part of the greatest number involved below which a difference is the rounding of binary numbers, not a measurement. */
const roundingShare = 1e-12;

/**
 * Simple acceptance: an error passes where it lies inside the tolerance; on the limit is inside.
 *
 * The acceptance limit is the tolerance limit (w = 0), so a result on the limit may be wrong as often as right.
 * Compared at full precision; only a difference under 10⁻¹² of the greatest distance involved, which is how a decimal
 * number is stored, does not count. Not of the span: an error is the difference of two distances, and far from zero
 * these are stored no better than to 10⁻¹⁶ of themselves, however short the range.
 *
 * @param error distance, indicated minus reference
 * @param limits lower and upper limit, distance
 * @param magnitude greatest distance from zero that the error came of, as the farther end of the range
 * @returns "pass" or "fail"
 * Source: ILAC-G8:09/2019, simple acceptance (w = 0); boundary: requirement that y = acceptance limit passes.
 * @example simpleAcceptance(9, { low: -9, high: 9 }, 2000) // "pass"
 */
export function simpleAcceptance(error: number, limits: ToleranceLimits, magnitude: number): "pass" | "fail" {
  const slack = roundingShare * magnitude;
  return error >= limits.low - slack && error <= limits.high + slack ? "pass" : "fail";
}
