import type { CauseEvidence } from "./cause-evidence.ts";
import { placeOf } from "./line-words.ts";
import { isLiveZero, signalEnds, signalErrorAt } from "./signal-order.ts";
import type { StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/** The two mistakes of a live zero, by the ids of their causes. */
export type LiveZeroMistake = "live-zero-scaled-from-zero" | "from-zero-scaled-as-live-zero";

/**
 * Which of the two mistakes of a live zero a stage shows, if any; other causes of its line step back then.
 *
 * A live-zero signal scaled from zero gives p = 0.2 + 0.8p: +20 % at its low end, right at its high end. The other way
 * round gives 1.25p − 0.25. In the controller the first needs a loop declared with a live zero; at the sensor, whose
 * signal is compared with what the loop declares, it needs one declared without.
 *
 * @param evidence of the phase
 * @param stage of the loop
 * @returns the mistake, or undefined
 * Source: arithmetic of 4–20 mA (IEC 60381-1) and 1–5 V (IEC 60381-2).
 * @example liveZeroMistake(evidence, stage) // undefined
 */
export function liveZeroMistake(
  { instrument }: Pick<CauseEvidence, "instrument">,
  stage: StageEvidence,
): LiveZeroMistake | undefined {
  if (stage.line === undefined || stage.stage === "wiring") return undefined;
  const ends = signalEnds(instrument);
  const isAtSensor = placeOf(stage.stage) === "sensor";
  const low = signalErrorAt(stage, ends, 0);
  const high = signalErrorAt(stage, ends, 100);
  const meets = ({ percentSpan, standardUncertainty }: typeof low, expected: number) =>
    Math.abs(percentSpan - expected) <= Math.max(thresholds.mistakeWithin, 2 * standardUncertainty);
  if (!meets(high, 0)) return undefined;
  if (meets(low, thresholds.liveZeroMistake) && isLiveZero(ends) !== isAtSensor) return "live-zero-scaled-from-zero";
  const isFromZero = ends.low === 0;
  if (meets(low, -thresholds.fromZeroMistake) && isFromZero !== isAtSensor) return "from-zero-scaled-as-live-zero";
  return undefined;
}
