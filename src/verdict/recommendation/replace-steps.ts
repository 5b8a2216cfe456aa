import { hysteresis } from "../causes/direction-causes.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { driftReasons } from "./drift-words.ts";
import type { Forecast, PhaseState } from "./phase-state.ts";
import { justTaughtWords, leftWords, partWords } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";
import type { KnownForecast } from "./teach-step.ts";

// When a sensor is to be replaced: its readings do not repeat, its curve cannot be cured, or it does not stay cured.

const proveTarget =
  "Prove with a large, flat, hard target, square to the axis, that it is not the target or the mount that does it.";

/**
 * For readings that do not repeat although the target was proved.
 *
 * @param scatter two standard deviations of repeated readings over the tolerance
 * @param state of the phase
 * @returns the step
 * Source: own choice, `usualThresholds.replaceScatterFrom`.
 * @example replaceForScatter(0.6, state).action // "replace"
 */
export function replaceForScatter(
  scatter: number,
  { thresholds, leastScatter }: Pick<PhaseState, "thresholds" | "leastScatter">,
): RecommendedStep {
  return stepOf({
    action: "replace",
    of: "sensor",
    does: "Replace the sensor.",
    rule: `two standard deviations of repeated readings are more than ${thresholds.replaceScatterFrom} % of the tolerance, however few were read`,
    reasons: [
      `Two standard deviations of repeated readings are ${partWords(scatter)}, and at least ${partWords(leastScatter)}: no zero and no span can cure that.`,
      "The loop check found the target in order.",
    ],
  });
}

/**
 * For a curve that even the best zero and span leave outside.
 *
 * @param forecast what a re-teach would leave
 * @param state of the phase
 * @returns the step
 * Source: `reteach`: the best two constants are exact, so that no other two can do better.
 * @example replaceForResidual(notCurable, state).reasons[0]?.says //
 *   "No re-teach can cure it: even the best zero and span leave 15 mm (150 % of the tolerance)."
 */
export function replaceForResidual(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const loop = state.findings.find(({ id }) => id === hysteresis.id);
  const isGap = loop !== undefined || forecast.whyNot?.because === "spread at one point";
  return stepOf({
    action: "replace",
    of: "sensor",
    does: isGap ? "Replace the sensor, or what guides its target." : "Replace the sensor.",
    rule: `even the best zero and span leave more than ${state.thresholds.replaceResidualFrom} % of the tolerance, whichever reading is left out`,
    reasons: [
      `No re-teach can cure it: even the best zero and span leave ${leftWords(forecast.best, state)}.`,
      ...justTaughtWords(state, "It was taught anew just now, and that has not cured it."),
      isGap ? gapReason(state, forecast) : "What is left is curved: it bends away from every straight line.",
      `Of the mean errors ${partWords(forecast.steadyLeft ?? 0)} is left for certain: without any one reading, and less what noise explains.`,
      ...(loop === undefined ? [] : [reasonOf(loop)]),
    ],
    before:
      loop === undefined
        ? proveTarget
        : `${firstRead(loop.separatedBy)} If the gap closes, only the dwell was too short.`,
  });
}

function firstRead(separatedBy: string): string {
  return `First ${separatedBy}.`;
}

function gapReason({ gap, unit }: PhaseState, { whyNot }: Forecast): string {
  if (gap !== null && 2 * gap > 1) {
    return `Rising and falling readings of the same point lie apart by ${partWords(2 * gap)}.`;
  }
  const at = whyNot === null ? "one point" : numberWords(whyNot.point, unit);
  return `The readings at ${at} alone lie too far apart for any zero and span.`;
}

/**
 * For a sensor that does not stay where it was taught.
 *
 * @param state of the phase, with its drift
 * @param rule in words
 * @returns the step
 * Source: own choice.
 * @example replaceForDrift(state, "its drift is more than 2 times as fast as before").action // "replace"
 */
export function replaceForDrift({ drift, unit }: Pick<PhaseState, "drift" | "unit">, rule: string): RecommendedStep {
  return stepOf({
    action: "replace",
    of: "sensor",
    does: "Replace the sensor.",
    rule,
    reasons: [
      "Another re-teach would bring it inside, but by its history it would not stay there.",
      ...driftReasons(drift, unit),
    ],
    before: "See first that mount, datum and target have not moved between the calibrations.",
  });
}
