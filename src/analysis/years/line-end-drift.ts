import { type Range, spanOf } from "../../model/range.ts";
import type { ToleranceLimits } from "../readings/tolerance.ts";
import { type DriftPhase, type PlaceDrift, placeDrift, placeErrors, type Since } from "./place-drift.ts";

/** A phase with the fitted line of its error, percent of span; null where there is none. */
export type FittedPhase = DriftPhase & { zeroError: number | null; spanError: number | null };

/**
 * The drift of the fitted line of the error at both ends of the range, each by its own scatter: zero, and zero and span.
 *
 * @param since states since the last adjustment
 * @param range of the instrument
 * @param limitsAt limits of the error at a distance, as the instrument's row states them
 * @returns lower and upper end; nothing where no test point was judged
 * Source: `placeDrift`; ANSI/ISA-51.1-1979 (R1993) for zero and span error.
 * @example lineEndDrifts(sinceAdjustment([]), { rangeLower: 0, rangeUpper: 100 }, () => ({ low: -1, high: 1 })) // []
 */
export function lineEndDrifts<Phase extends FittedPhase>(
  since: Since<Phase>,
  range: Range,
  limitsAt: (distance: number) => ToleranceLimits,
): readonly PlaceDrift[] {
  if ((since.newest?.points ?? []).length === 0) return [];
  const endAt = (distance: number, percentAt: (phase: Phase) => number | null) =>
    placeDrift(
      placeErrors(
        {
          distance,
          limits: limitsAt(distance),
          errorIn: (phase: Phase) => {
            const percent = percentAt(phase);
            return percent === null ? undefined : (percent / 100) * spanOf(range);
          },
        },
        since,
      ),
      since.lastDay,
    );
  return [
    endAt(range.rangeLower, ({ zeroError }) => zeroError),
    endAt(range.rangeUpper, ({ zeroError, spanError }) =>
      zeroError === null || spanError === null ? null : zeroError + spanError,
    ),
  ];
}
