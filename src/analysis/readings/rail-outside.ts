import type { Reading } from "../../model/calibration.ts";
import { greatestDistanceOf, spanOf } from "../../model/range.ts";
import { isInside } from "../../units/is-inside.ts";
import type { Loop } from "./loop.ts";
import type { Rail } from "./railed-readings.ts";
import { toleranceAt } from "./tolerance.ts";

/**
 * Whether a reading at an end of the signal is outside: by what a stage shows there, or by what the others say that the
 * sensor should show.
 *
 * @param reading its reference
 * @param rail the end at which it stands; undefined for a reading that stands at none
 * @param shown error of the stage that is asked about, distance; undefined where it was not read
 * @param loop for the tolerance
 * @returns false where the ideal signal stands at the same end and the stage shows what it should
 * Source: own choice.
 * @example isRailOutside({ reference: 200 }, undefined, 12, evidence.loop) // false
 */
export function isRailOutside(
  { reference }: Pick<Reading, "reference">,
  rail: Rail | undefined,
  shown: number | undefined,
  loop: Loop,
): boolean {
  if (rail === undefined) return false;
  const { signal } = loop.characteristics;
  const limits = toleranceAt(loop.toleranceTerms, signal, reference);
  const expected = rail.isIdealRailed ? [] : [signal.rangeLower + (rail.expected / 100) * spanOf(signal) - reference];
  return [...(shown === undefined ? [] : [shown]), ...expected].some(
    (error) => !isInside(error, limits, greatestDistanceOf(signal)),
  );
}
