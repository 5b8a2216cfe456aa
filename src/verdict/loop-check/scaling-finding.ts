import { partOfTolerance } from "../../analysis/readings/place-in-range.ts";
import { greatestDistanceOf, type Range } from "../../model/range.ts";
import { isInside } from "../../units/is-inside.ts";
import { numberWords } from "./limit-words.ts";
import type { LoopLimit } from "./loop-limits.ts";

/** What the scaling of one reading adds, and the tolerance there; distance. */
export type ScalingShare = { share: number; reference: number; toleranceLow: number; toleranceHigh: number };

/**
 * Whether the value shown is that computed from the raw counts: by the share of the scaling that takes up the most of its
 * tolerance.
 *
 * @param shares of one phase
 * @param about title of the phase, unit of the distances, range of the instrument
 * @returns what the item "scaling" of a loop check has to say; undefined without a share
 * Source: `stageShares`; that scaling is held to the tolerance of the whole loop is own choice.
 * @example scalingFinding([{ share: 2, reference: 50, toleranceLow: -1, toleranceHigh: 1 }], { title: "as left", unit:
 *   "mm", range: { rangeLower: 0, rangeUpper: 100 } })?.finding?.isPass // false
 */
export function scalingFinding(
  shares: readonly ScalingShare[],
  { title, unit, range }: { title: string; unit: string; range: Range },
): LoopLimit | undefined {
  const parts = shares.map((one) => ({
    ...one,
    part: partOfTolerance(one.share, one.toleranceLow, one.toleranceHigh),
  }));
  const [worst] = parts.toSorted((one, other) => other.part - one.part);
  if (worst === undefined) return undefined;
  const { share, reference, toleranceLow: low, toleranceHigh: high } = worst;
  const says =
    `${title}, computing the value from raw counts differs from the value shown by ` +
    `${numberWords(share, unit, 3)} at ${numberWords(reference, unit)}, tolerance there ` +
    numberWords(share < 0 ? low : high, unit, 3);
  return {
    finding: { isPass: isInside(share, { low, high }, greatestDistanceOf(range)), says },
    basis: "the readings",
  };
}
