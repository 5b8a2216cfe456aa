import { greatestOf } from "./least-and-greatest.ts";
import { type LineBetween, lineBetween } from "./line-between.ts";
import { requireFinite, requirePoints } from "./require-finite.ts";

/** The straight line whose greatest deviation, each as a part of the half width at its place, is least. */
export type LineOfLeastShare = Omit<LineBetween, "greatestExcess"> & {
  /** Greatest absolute deviation over half width: up to 1 the line stays between all bounds. */
  readonly greatestShare: number;
};

/**
 * Gives the straight line that uses up the least part of the room at each point: the weighted minimax line.
 *
 * For a share t the line that leaves the bounds middle ± t · half width least is `lineBetween`; the greatest share that
 * this line needs is the next t. Each step needs less, and where it does not, no line needs less. Where all half widths
 * are the same, one step is all.
 *
 * @param abscissas array of n >= 2 finite numbers, any order, repeats allowed, not all equal
 * @param middles array of n finite numbers, same order
 * @param halfWidths array of n finite numbers above zero, same order, in the unit of the middles
 * @returns the line and the greatest share of a half width that lies between it and a middle, correct to rounding
 * Faults: `RangeError` when lengths differ, n < 2, a value is not finite, a half width is not above zero, or all
 * abscissas are equal.
 * Source: W. Dinkelbach, "On nonlinear fractional programming", Management Science 13, 492 (1967), for the greatest of
 * several ratios J.-P. Crouzeix, J. A. Ferland, S. Schaible, J. Optim. Theory Appl. 47, 35 (1985); from memory.
 * @example lineOfLeastShare([0, 1, 2], [0, 3, 0], [1, 1, 4]) // slope 1.285714, intercept 0.857143, greatestShare 0.857143
 */
export function lineOfLeastShare(
  abscissas: readonly number[],
  middles: readonly number[],
  halfWidths: readonly number[],
): LineOfLeastShare {
  requirePoints(abscissas, middles, 2);
  requirePoints(abscissas, halfWidths, 2);
  requireFinite("half widths", halfWidths);
  if (!halfWidths.every((width) => width > 0)) throw new RangeError("half widths have to be above zero");
  const between = (share: number) => {
    const { greatestExcess: _, ...line } = lineBetween(
      abscissas,
      middles.map((middle, place) => middle - share * halfWidths[place]!),
      middles.map((middle, place) => middle + share * halfWidths[place]!),
    );
    return { ...line, greatestShare: greatestShareOf(line, abscissas, middles, halfWidths) };
  };
  let best = between(1);
  if (halfWidths.every((width) => width === halfWidths[0])) return best;
  for (;;) {
    const next = between(best.greatestShare);
    if (!(next.greatestShare < best.greatestShare)) return best;
    best = next;
  }
}

function greatestShareOf(
  { slope, abscissaMean, valueAtMean }: Omit<LineOfLeastShare, "greatestShare">,
  abscissas: readonly number[],
  middles: readonly number[],
  halfWidths: readonly number[],
): number {
  return greatestOf(
    abscissas.map((abscissa, place) => {
      const value = valueAtMean + slope * (abscissa - abscissaMean);
      return Math.abs(value - middles[place]!) / halfWidths[place]!;
    }),
  );
}
