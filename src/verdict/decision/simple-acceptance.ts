import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { isInside } from "../../units/is-inside.ts";

/**
 * Simple acceptance: an error passes where it lies inside the tolerance; on the limit is inside.
 *
 * The acceptance limit is the tolerance limit (w = 0), so a result on the limit may be wrong as often as right.
 * Compared by `isInside`: at full precision, but for how a decimal number is stored.
 *
 * @param error distance, indicated minus reference
 * @param limits lower and upper limit, distance
 * @param magnitude greatest distance from zero that the error came of, as the farther end of the range
 * @returns "pass" or "fail"
 * Source: ILAC-G8:09/2019, simple acceptance (w = 0); boundary: requirement that y = acceptance limit passes.
 * @example simpleAcceptance(9, { low: -9, high: 9 }, 2000) // "pass"
 */
export function simpleAcceptance(error: number, limits: ToleranceLimits, magnitude: number): "pass" | "fail" {
  return isInside(error, limits, magnitude) ? "pass" : "fail";
}
