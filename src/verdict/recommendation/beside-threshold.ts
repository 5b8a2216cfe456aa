import { isInside } from "../../units/is-inside.ts";

/**
 * Whether a part of the tolerance reaches a threshold; on it is reached.
 *
 * @param part of the tolerance, 1 for the whole of it
 * @param percent the threshold, percent of the tolerance
 * @returns true from the threshold on, but for what only the storage of decimal numbers makes
 * Source: own choice, as `isInside`.
 * @example reaches(0.29, 29) // true, though 100 · 0.29 is stored as a little less than 29
 */
export function reaches(part: number, percent: number): boolean {
  return isInside(100 * part, { low: percent, high: null });
}

/**
 * Whether a part of the tolerance goes beyond a threshold; on it is not beyond.
 *
 * @param part of the tolerance, 1 for the whole of it
 * @param percent the threshold, percent of the tolerance
 * @returns true beyond the threshold, but for what only the storage of decimal numbers makes
 * Source: own choice, as `isInside`.
 * @example exceeds(0.55, 55) // false, though 100 · 0.55 is stored as a little more than 55
 */
export function exceeds(part: number, percent: number): boolean {
  return !isInside(100 * part, { low: null, high: percent });
}
