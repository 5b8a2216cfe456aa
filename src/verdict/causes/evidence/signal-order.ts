import type { StageError } from "../../../analysis/stages/stage-lines.ts";
import type { Instrument } from "../../../model/instrument.ts";
import { lineErrorAt, type StageEvidence } from "./stage-evidence.ts";

/** Ends of the signal from its lower to its higher value, whichever way the loop acts. */
export type SignalEnds = { low: number; high: number; isReverse: boolean };

/**
 * The ends of an instrument's signal in the order of the signal.
 *
 * @param instrument its row
 * @returns lower and higher end in mA or V, and whether the loop is reverse-acting
 * Source: own choice.
 * @example signalEnds({ signalLower: 20, signalUpper: 4 }) // { low: 4, high: 20, isReverse: true }
 */
export function signalEnds({ signalLower, signalUpper }: Pick<Instrument, "signalLower" | "signalUpper">): SignalEnds {
  const isReverse = signalUpper < signalLower;
  return isReverse
    ? { low: signalUpper, high: signalLower, isReverse }
    : { low: signalLower, high: signalUpper, isReverse };
}

/**
 * A place of the signal in percent of span of the range, from a place in percent of the signal's own span.
 *
 * @param ends of the signal
 * @param part percent from the low end of the signal to its high end; 0 mA of 4–20 mA is −25
 * @returns percent of span of the range
 * Source: own choice.
 * @example atSignal({ low: 4, high: 20, isReverse: true }, 0) // 100
 */
export function atSignal({ isReverse }: SignalEnds, part: number): number {
  return isReverse ? 100 - part : part;
}

/**
 * The error of a stage as the signal feels it: above zero where it gives too much signal, or too much for the signal.
 *
 * @param stage with a line
 * @param ends of the signal
 * @param part percent from the low end of the signal to its high end
 * @returns error in percent of the signal's span, with its uncertainty
 * @throws TypeError for a stage without a line
 * Source: own choice.
 * @example signalErrorAt(stage, { low: 4, high: 20, isReverse: true }, 0).percentSpan // -2.012
 */
export function signalErrorAt(stage: StageEvidence, ends: SignalEnds, part: number): StageError {
  const { percentSpan, standardUncertainty } = lineErrorAt(stage, atSignal(ends, part));
  return { percentSpan: ends.isReverse ? 0 - percentSpan : percentSpan, standardUncertainty };
}

/**
 * Where the signal is truly zero, in percent from its low end to its high end.
 *
 * @param ends of the signal
 * @returns −25 for 4–20 mA and 1–5 V, 0 for a signal that begins at zero
 * Source: IEC 60381-1 and IEC 60381-2 for the signals.
 * @example trueZero({ low: 4, high: 20, isReverse: false }) // -25
 */
export function trueZero({ low, high }: SignalEnds): number {
  return 0 - (100 * low) / (high - low);
}

/**
 * Whether a signal has a live zero of a fifth of its upper end, as 4–20 mA and 1–5 V have.
 *
 * @param ends of the signal
 * @returns true for those two
 * Source: IEC 60381-1 and IEC 60381-2.
 * @example isLiveZero({ low: 1, high: 5, isReverse: false }) // true
 */
export function isLiveZero({ low, high }: SignalEnds): boolean {
  return Math.abs(low / high - 0.2) < 1e-9;
}
