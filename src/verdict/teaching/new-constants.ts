import { type Figure, notDetermined } from "../../analysis/figures/figure.ts";
import type { Correction } from "../../analysis/figures/two-constant-correction.ts";
import { type Characteristic, idealOutput, outputSpanOf } from "../../analysis/readings/ideal-characteristic.ts";
import type { Loop, Stage } from "../../analysis/readings/loop.ts";

/** New constants for the controller; which kind follows from what was read. */
export type NewConstantsFound =
  | { kind: "values at counts"; countsLower: number; countsUpper: number; valueLower: number; valueUpper: number }
  | { kind: "values in place of others"; offset: number; gain: number; valueLower: number; valueUpper: number }
  | { kind: "inputs at range ends"; of: "signal" | "counts"; atLower: number; atUpper: number };

/**
 * The constants that make the controller carry out a correction.
 *
 * From counts: the controller values to be shown at the two raw counts, whatever it holds now. From controller values
 * alone: each new constant is offset + gain · the one that it replaces, for what the controller holds now is not in the
 * readings. Without controller values: the signal, or the counts, at which the controller should be told the range ends.
 *
 * @param of the quantity whose indicated distances the correction is for
 * @param correction what its range ends are to stand for; distance
 * @param loop its ideal lines
 * @returns the constants, at full precision; or the reason why there are none
 * Source: the ideal line of each stage, read both ways.
 * @example newConstantsOf("signal", { lower: -2, upper: 98 }, { characteristics: { signal: { rangeLower: 0, rangeUpper:
 *   100, outputAtLower: 4, outputAtUpper: 20 } }, toleranceTerms: [], faultLevels: {}, signalUnit: "mA" })
 *   // { kind: "inputs at range ends", of: "signal", atLower: 4.32, atUpper: 20.32 }
 */
export function newConstantsOf(of: Stage, correction: Correction, loop: Loop): Figure<NewConstantsFound> {
  const { value } = loop.characteristics;
  const own = loop.characteristics[of];
  if (own === undefined) return notDetermined(`the instrument does not say what ${of} is meant at its range ends`);
  if (of === "counts" && value !== undefined) return valuesAtCounts(correction, own, value);
  if (of === "value") return valuesInPlace(correction, own);
  return inputsAtRangeEnds(of, correction, own);
}

function valuesAtCounts({ lower, upper }: Correction, counts: Characteristic, value: Characteristic) {
  return {
    kind: "values at counts",
    countsLower: counts.outputAtLower,
    countsUpper: counts.outputAtUpper,
    valueLower: idealOutput(value, lower),
    valueUpper: idealOutput(value, upper),
  } as const;
}

function valuesInPlace({ lower, upper }: Correction, value: Characteristic) {
  const [valueLower, valueUpper] = [idealOutput(value, lower), idealOutput(value, upper)];
  const gain = (valueUpper - valueLower) / outputSpanOf(value);
  return {
    kind: "values in place of others",
    offset: valueLower - gain * value.outputAtLower,
    gain,
    valueLower,
    valueUpper,
  } as const;
}

function inputsAtRangeEnds(of: "signal" | "counts", { lower, upper }: Correction, own: Characteristic) {
  if (lower === upper) return notDetermined(`the ${of} does not follow the distance`);
  const corrected = { ...own, rangeLower: lower, rangeUpper: upper };
  return {
    kind: "inputs at range ends",
    of,
    atLower: idealOutput(corrected, own.rangeLower),
    atUpper: idealOutput(corrected, own.rangeUpper),
  } as const;
}
