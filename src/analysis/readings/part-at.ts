import { spanOf } from "../../model/range.ts";
import type { Loop } from "./loop.ts";
import { hasTolerance, partOfTolerance } from "./place-in-range.ts";
import { toleranceAt } from "./tolerance.ts";

/**
 * How much of the tolerance at a distance an error in percent of span takes up; of that in the middle of the range where
 * nothing is allowed there.
 *
 * @param loop its range and tolerance
 * @param percentSpan error, percent of span
 * @param reference distance
 * @returns as `partOfTolerance`
 * Source: own choice.
 * @example partAt({ characteristics: { signal: { rangeLower: 0, rangeUpper: 200, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [{ basis: "distance", plus: 4, minus: 4 }], faultLevels: {}, signalUnit: "mA" }, 1, 50) // 0.5
 */
export function partAt({ characteristics, toleranceTerms }: Loop, percentSpan: number, reference: number): number {
  const { signal } = characteristics;
  const there = toleranceAt(toleranceTerms, signal, reference);
  const isAllowed = hasTolerance({ toleranceLow: there.low, toleranceHigh: there.high });
  const { low, high } = isAllowed
    ? there
    : toleranceAt(toleranceTerms, signal, (signal.rangeLower + signal.rangeUpper) / 2);
  return partOfTolerance((percentSpan * spanOf(signal)) / 100, low, high);
}

/**
 * The greatest part of its tolerance that any of some errors takes up; where nothing is allowed, at a distance of 0 by
 * percent of reading, there is no part to speak of.
 *
 * @param errors with the limits at their readings, distance
 * @returns 0 without an error
 * Source: `partOfTolerance`.
 * @example greatestPart([{ error: 2, toleranceLow: -4, toleranceHigh: 4 }, { error: -1, toleranceLow: 0, toleranceHigh: 0
 *   }]) // 0.5
 */
export function greatestPart(
  errors: readonly { error: number; toleranceLow: number; toleranceHigh: number }[],
): number {
  return errors
    .filter(hasTolerance)
    .map(({ error, toleranceLow, toleranceHigh }) => partOfTolerance(error, toleranceLow, toleranceHigh))
    .reduce((greatest, part) => Math.max(greatest, part), 0);
}
