/** What an effect means beside a tolerance. */
export const effectWeights = ["small", "counts", "beyond"] as const;
export type EffectWeight = (typeof effectWeights)[number];

/** Part of the tolerance from which an effect counts: own choice, the four to one that the trade asks of a reference. */
const countsFrom = 0.25;

/**
 * Whether one effect matters beside a tolerance.
 *
 * @param effect distance, its sign plays no part
 * @param tolerance the lesser of the two sides, distance, >= 0
 * @returns "small" under a quarter of the tolerance, "beyond" above the whole of it, "counts" between
 * Source: own choice.
 * @example effectWeight(-6.3, 14) // "counts"
 */
export function effectWeight(effect: number, tolerance: number): EffectWeight {
  const size = Math.abs(effect);
  if (size > tolerance) return "beyond";
  return size >= countsFrom * tolerance && size > 0 ? "counts" : "small";
}
