import type { ToleranceLimits } from "../analysis/tolerance.ts";

/** Part of the span below which a difference is the rounding of binary numbers, not a measurement. */
const roundingShare = 1e-12;

/**
 * Simple acceptance: an error passes where it lies inside the tolerance; on the limit is inside.
 *
 * The acceptance limit is the tolerance limit (w = 0), so a result on the limit may be wrong as often as right.
 * Compared at full precision; only a difference under 10⁻¹² of span, which is how a decimal number is stored, does
 * not count.
 *
 * @param error distance, indicated minus reference
 * @param limits lower and upper limit, distance
 * @param span of the range, distance
 * @returns "pass" or "fail"
 * Source: ILAC-G8:09/2019, simple acceptance (w = 0); boundary: requirement that y = acceptance limit passes.
 * @example simpleAcceptance(9, { low: -9, high: 9 }, 1800) // "pass"
 */
export function simpleAcceptance(error: number, limits: ToleranceLimits, span: number): "pass" | "fail" {
  const slack = roundingShare * span;
  return error >= limits.low - slack && error <= limits.high + slack ? "pass" : "fail";
}
