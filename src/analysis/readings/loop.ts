import type { Instrument } from "../../model/instrument.ts";
import type { ToleranceBasis } from "../../model/instrument-words.ts";
import { type FaultLevels, milliampFaultLevels } from "./fault-signal.ts";
import type { Characteristic } from "./ideal-characteristic.ts";
import type { ToleranceTerm } from "./tolerance.ts";

/** The quantities that a loop gives at each reading, from the sensor to the controller. */
export const stages = ["signal", "counts", "value"] as const;
export type Stage = (typeof stages)[number];

/** The same with the signal once more at the terminals of the input card, which is meant to be that of the sensor. */
export const readStages = ["signal", "signalAtCard", "counts", "value"] as const;
export type ReadStage = (typeof readStages)[number];

/** What a loop is meant to do, as arithmetic needs it. */
export type Loop = {
  characteristics: Partial<Record<Stage, Characteristic>> & { signal: Characteristic };
  toleranceTerms: readonly ToleranceTerm[];
  faultLevels: FaultLevels;
  signalUnit: Instrument["signalUnit"];
};

/**
 * The loop that an instrument's row describes.
 *
 * @param instrument a checked row: U above L, signals that differ, pairs that are complete
 * @returns a line for each stage whose two ends are given, the terms of the tolerance, the fault levels; a 4–20 mA
 *   loop that names no fault levels has those of NAMUR NE 43
 * Source: NAMUR NE 43 for the levels.
 * @example loopOf({ tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4, signalUpper: 20,
 *   signalUnit: "mA", tolerance: 1, toleranceBasis: "percent of span" }).faultLevels // { low: 3.6, high: 21 }
 */
export function loopOf(instrument: Instrument): Loop {
  const counts = characteristic(instrument, instrument.countsLower, instrument.countsUpper);
  const value = characteristic(instrument, instrument.valueLower, instrument.valueUpper);
  return {
    characteristics: {
      signal: {
        rangeLower: instrument.rangeLower,
        rangeUpper: instrument.rangeUpper,
        outputAtLower: instrument.signalLower,
        outputAtUpper: instrument.signalUpper,
      },
      ...(counts && { counts }),
      ...(value && { value }),
    },
    toleranceTerms: toleranceTermsOf(instrument),
    faultLevels: faultLevelsOf(instrument),
    signalUnit: instrument.signalUnit,
  };
}

function characteristic(
  { rangeLower, rangeUpper }: Instrument,
  outputAtLower: number | undefined,
  outputAtUpper: number | undefined,
): Characteristic | undefined {
  if (outputAtLower === undefined || outputAtUpper === undefined) return undefined;
  return { rangeLower, rangeUpper, outputAtLower, outputAtUpper };
}

function toleranceTermsOf(instrument: Instrument): readonly ToleranceTerm[] {
  const first = term(instrument.toleranceBasis, instrument.tolerance, instrument.toleranceMinus);
  if (instrument.secondTolerance === undefined || instrument.secondToleranceBasis === undefined) return [first];
  const second = term(instrument.secondToleranceBasis, instrument.secondTolerance, instrument.secondToleranceMinus);
  return [first, { ...second, ...(instrument.toleranceCombined && { combined: instrument.toleranceCombined }) }];
}

function term(basis: ToleranceBasis, plus: number, minus: number | undefined): ToleranceTerm {
  return { basis, plus, minus: minus ?? plus };
}

function faultLevelsOf({ faultLow, faultHigh, signalUnit, signalLower, signalUpper }: Instrument): FaultLevels {
  const isLiveZero = signalUnit === "mA" && Math.min(signalLower, signalUpper) === 4;
  const usual = isLiveZero && Math.max(signalLower, signalUpper) === 20 ? milliampFaultLevels : {};
  return { low: faultLow ?? usual.low, high: faultHigh ?? usual.high };
}
