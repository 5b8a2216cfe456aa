import type { Evidence } from "../finding.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { signalEnds, signalErrorAt } from "./signal-order.ts";
import type { StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { missOf } from "./zero-candidates.ts";

/**
 * Whether a stage has the error of a leakage across a two-wire loop.
 *
 * A resistance across the loop carries (V − I·R) / R_leak beside the sensor: too much current everywhere, more at the low
 * end, and none where I = V/R, far above 20 mA.
 *
 * @param evidence of the phase; only a loop that is powered by its signal can have one. Where nobody says whether it is,
 *   the difference between two meters may be one, an error at the sensor is not called one
 * @param stage with a line
 * @param isSlopeOpen true to ask whether it cannot be excluded, when the slope may be noise
 * @returns true where both ends have too much current and the line, if it slopes, points to a likely V/R
 * Source: Ohm's law; the range of V/R is own choice, see `thresholds`.
 * @example isLeakage(evidence, stage) // false
 */
export function isLeakage({ instrument }: CauseEvidence, stage: StageEvidence, isSlopeOpen = false): boolean {
  const mayBePowered = stage.stage === "wiring" ? instrument.loopPowered !== false : instrument.loopPowered === true;
  if (!mayBePowered || instrument.signalUnit !== "mA" || stage.line === undefined) return false;
  const ends = signalEnds(instrument);
  const low = signalErrorAt(stage, ends, 0);
  const high = signalErrorAt(stage, ends, 100);
  const isTooMuch = [low, high].every(
    ({ percentSpan, standardUncertainty }) =>
      percentSpan > thresholds.excludedBeyondUncertainties * standardUncertainty,
  );
  if (!isTooMuch) return false;
  if (isSlopeOpen) return true;
  const slopes = missOf(stage, "nowhere") > thresholds.excludedBeyondUncertainties;
  const [least, greatest] = thresholds.leakageCrossing;
  const crossing = crossingMilliamps(ends, low.percentSpan, high.percentSpan);
  return slopes && crossing >= least && crossing <= greatest;
}

/**
 * The numbers of a leakage.
 *
 * @param evidence of the phase
 * @param stage with a line
 * @returns leakage currents at both ends of the signal, and the current at which it would vanish, V/R
 * Source: Ohm's law.
 * @example leakageNumbers(evidence, stage)[2].name // "leakage would vanish at"
 */
export function leakageNumbers({ instrument }: CauseEvidence, stage: StageEvidence): Evidence[] {
  const ends = signalEnds(instrument);
  const low = signalErrorAt(stage, ends, 0).percentSpan;
  const high = signalErrorAt(stage, ends, 100).percentSpan;
  const milliampsPerPercent = (ends.high - ends.low) / 100;
  return [
    { name: `leakage at ${ends.low} mA`, value: low * milliampsPerPercent, unit: "mA" },
    { name: `leakage at ${ends.high} mA`, value: high * milliampsPerPercent, unit: "mA" },
    { name: "leakage would vanish at", value: crossingMilliamps(ends, low, high), unit: "mA" },
  ];
}

function crossingMilliamps(ends: { low: number; high: number }, low: number, high: number): number {
  if (low === high) return Number.MAX_VALUE;
  return ends.low + (low / (low - high)) * (ends.high - ends.low);
}
