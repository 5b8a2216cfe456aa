import type { Instrument } from "../model/instrument.ts";
import type { ToleranceBasis } from "../model/instrument-words.ts";
import { writePlain } from "../units/write-number.ts";

/** What of an instrument a tolerance is said by. */
export type StatedTolerance = Pick<
  Instrument,
  | "tolerance"
  | "toleranceMinus"
  | "toleranceBasis"
  | "secondTolerance"
  | "secondToleranceMinus"
  | "secondToleranceBasis"
  | "toleranceCombined"
  | "distanceUnit"
  | "signalUnit"
>;

/**
 * A tolerance in words, as it is understood.
 *
 * @param instrument the columns of its tolerance, and its units
 * @returns one term or two, and how they belong together; numbers as they were typed
 * Source: own choice of the words.
 * @example toleranceWords({ tolerance: 0.5, toleranceBasis: "percent of reading", secondTolerance: 5,
 *   secondToleranceBasis: "distance", toleranceCombined: "greater", distanceUnit: "mm", signalUnit: "mA" })
 *   // "±0.5 % of reading or ±5 mm, whichever is greater"
 */
export function toleranceWords(instrument: StatedTolerance): string {
  const { secondTolerance, secondToleranceMinus, secondToleranceBasis, toleranceCombined = "sum" } = instrument;
  const first = termWords(instrument.tolerance, instrument.toleranceMinus, basisUnit(instrument.toleranceBasis));
  if (secondTolerance === undefined || secondToleranceBasis === undefined) return first;
  const second = termWords(secondTolerance, secondToleranceMinus, basisUnit(secondToleranceBasis));
  return toleranceCombined === "sum"
    ? `${first} and ${second}, added`
    : `${first} or ${second}, whichever is ${toleranceCombined}`;

  function basisUnit(basis: ToleranceBasis): string {
    if (basis === "percent of span") return "% of span";
    if (basis === "percent of reading") return "% of reading";
    return basis === "distance" ? instrument.distanceUnit : instrument.signalUnit;
  }
}

function termWords(plus: number, minus: number | undefined, unit: string): string {
  if (minus === undefined || minus === plus) return `±${writePlain(plus)} ${unit}`;
  return `−${writePlain(minus)} / +${writePlain(plus)} ${unit}`;
}
