import type { ToleranceLimits } from "../../analysis/readings/tolerance.ts";
import { marked } from "../../units/decimal-mark.ts";
import { writeFixed } from "../../units/write-number.ts";
import { testUncertaintyRatio } from "./test-uncertainty-ratio.ts";

/** k that counts as 2: to 2.05, Student's t of 50 degrees of freedom. A greater k means a smaller u, and a safer band. */
const [leastFactor, greatestFactor] = [1.995, 2.055];
/** Least ratio for which the worst case was computed. */
const leastRatio = 0.6;

/**
 * Why the managed guard band does not hold at a test point, if it does not.
 *
 * Its 2 % is reckoned for a tolerance with 0 in its middle, a normal error with U = 2u, and a ratio of 0.6 or more.
 *
 * @param point limits of the error, U, its k
 * @returns the condition that is not met, in words; undefined where all are
 * Source: the conditions under which the worst case of `managedGuardBand` was computed; which k counts as 2 is own choice.
 * @example whyNotManaged({ limits: { low: -1, high: 1 }, expandedUncertainty: 0.2, coverageFactor: 2.31 })
 *   // "k is 2.31 and not 2"
 */
export function whyNotManaged({
  limits,
  expandedUncertainty,
  coverageFactor,
}: {
  limits: ToleranceLimits;
  expandedUncertainty: number;
  coverageFactor?: number | undefined;
}): string | undefined {
  if (Math.abs(limits.low + limits.high) > 1e-9 * (limits.high - limits.low)) {
    return "the two sides of the tolerance differ";
  }
  if (coverageFactor === undefined) return "k is not known";
  if (coverageFactor < leastFactor || coverageFactor >= greatestFactor) {
    return `k is ${writeFixed(coverageFactor, 2)} and not 2`;
  }
  if (testUncertaintyRatio(limits, expandedUncertainty) < leastRatio)
    return marked("U is more than 1.67 times the tolerance");
  return undefined;
}

/**
 * Gives the guard band that keeps the share of false passes under 2 %, whatever share of instruments is in tolerance.
 *
 * w = U · max(0, 1.04 − exp(0.38 · ln(TUR) − 0.54)); 0 from a ratio of about 4.6 up.
 *
 * @param expandedUncertainty U of the error, distance, >= 0, with k = 2: the risk below holds for U = 2u
 * @param testUncertaintyRatio TUR, no unit, >= 0; Infinity is allowed
 * @returns w, distance, to be taken off both tolerance limits; it exceeds the tolerance where TUR is under about 0.57
 * Faults: `RangeError` for an uncertainty that is negative or not finite, or a negative ratio.
 * Source: M. Dobbert, "A guard-band strategy for managing false-accept risk", NCSLI 2008, for the form. The
 * three constants are quoted from memory of it; what they do was computed anew: the probability of a false pass, two-sided
 * tolerance and normal prior about 0, is at most 1.97 % at every in-tolerance rate, for TUR 0.6 and above.
 * @example managedGuardBand(2, 2) // 0.5633
 */
export function managedGuardBand(expandedUncertainty: number, testUncertaintyRatio: number): number {
  if (!(expandedUncertainty >= 0 && Number.isFinite(expandedUncertainty)))
    throw new RangeError(`an expanded uncertainty of ${expandedUncertainty} is not a number >= 0`);
  if (!(testUncertaintyRatio >= 0)) throw new RangeError(`a test uncertainty ratio of ${testUncertaintyRatio}`);
  return expandedUncertainty * Math.max(0, 1.04 - Math.exp(0.38 * Math.log(testUncertaintyRatio) - 0.54));
}
