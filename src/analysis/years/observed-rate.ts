import { clopperPearson } from "../../numeric/clopper-pearson.ts";
import { type Figure, notDetermined } from "../figures/figure.ts";

/** How many of so many held, as a part, with the two-sided 95 % interval of the rate behind it. */
export type ObservedRate = { inTolerance: number; of: number; rate: number; low: number; high: number };

/**
 * The part of calibrations that found their loop in tolerance, and how far that may be chance.
 *
 * @param found for each calibration, whether it found its loop in tolerance
 * @returns count, rate 0 to 1 and the two-sided 95 % Clopper–Pearson interval; or why there is none
 * Source: ILAC-G24:2022 / OIML D 10, 6.6 for observed reliability; C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404.
 * @example observedRate([true, true, true, false, true]) // inTolerance 4, of 5, rate 0.8, low 0.2836, high 0.9949
 */
export function observedRate(found: readonly boolean[]): Figure<ObservedRate> {
  const of = found.length;
  if (of === 0) return notDetermined("not enough: nothing was found at the end of an interval");
  const inTolerance = found.filter(Boolean).length;
  return { inTolerance, of, rate: inTolerance / of, ...clopperPearson(inTolerance, of) };
}
