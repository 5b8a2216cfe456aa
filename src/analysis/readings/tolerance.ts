import type { ToleranceBasis, ToleranceCombination } from "../../model/instrument-words.ts";
import { spanOf } from "../../model/range.ts";
import { type Characteristic, outputSpanOf } from "./ideal-characteristic.ts";

/**
 * One term of a tolerance: how far up and how far down, both above zero, in the unit of its basis; and how it belongs to
 * the terms before it, to whose sum it is added where that is not said.
 */
export type ToleranceTerm = {
  basis: ToleranceBasis;
  plus: number;
  minus: number;
  combined?: ToleranceCombination | undefined;
};

/** Limits of the error at one reading, in distance: low is below zero, high above. */
export type ToleranceLimits = { low: number; high: number };

/**
 * The tolerance at one reference distance: its terms, each turned into distance, added, or on each side the greater or the
 * less of them.
 *
 * Percent of span: S · p/100. Percent of reading: |x| · p/100, x the reference distance there. Distance: as it is.
 * Signal: S/|s1 − s0| for each unit of signal.
 *
 * @param terms one or two terms
 * @param characteristic range and signal ends of the loop
 * @param reference x, distance
 * @returns lower and upper limit of the error, distance
 * Source: common practice of the trade.
 * @example toleranceAt([{ basis: "percent of reading", plus: 0.5, minus: 0.5 }, { basis: "distance", plus: 5, minus: 5,
 *   combined: "greater" }], { rangeLower: 200, rangeUpper: 2000, outputAtLower: 4, outputAtUpper: 20 }, 1600)
 *   // { low: -8, high: 8 }
 * @example toleranceAt([{ basis: "percent of span", plus: 0.5, minus: 0.5 }], { rangeLower: 200, rangeUpper: 2000,
 *   outputAtLower: 4, outputAtUpper: 20 }, 300) // { low: -9, high: 9 }
 */
export function toleranceAt(
  terms: readonly ToleranceTerm[],
  characteristic: Characteristic,
  reference: number,
): ToleranceLimits {
  let low = 0;
  let high = 0;
  for (const [place, { basis, plus, minus, combined }] of terms.entries()) {
    const distance = distancePerUnit(basis, characteristic, reference);
    const join = joins[place === 0 ? "sum" : (combined ?? "sum")];
    low = -join(-low, minus * distance);
    high = join(high, plus * distance);
  }
  return { low: low === 0 ? 0 : low, high };
}

const joins: Readonly<Record<ToleranceCombination, (before: number, term: number) => number>> = {
  sum: (before, term) => before + term,
  greater: Math.max,
  less: Math.min,
};

function distancePerUnit(basis: ToleranceBasis, characteristic: Characteristic, reference: number): number {
  switch (basis) {
    case "percent of span":
      return spanOf(characteristic) / 100;
    case "percent of reading":
      return Math.abs(reference) / 100;
    case "distance":
      return 1;
    case "signal":
      return spanOf(characteristic) / Math.abs(outputSpanOf(characteristic));
  }
}
