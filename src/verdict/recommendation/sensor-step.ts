import { exceeds } from "./beside-threshold.ts";
import type { PhaseState } from "./phase-state.ts";
import { replaceForDrift, replaceForResidual, replaceForScatter } from "./replace-steps.ts";
import { type RecommendedStep, stepOf } from "./step.ts";
import { betterStandard, type KnownForecast, teachStep } from "./teach-step.ts";

/**
 * What to do with a sensor that is off, where nothing around it explains why: teach it anew, replace it, or neither yet.
 *
 * In this order: readings that scatter too much, a curve that no zero and span bring inside, a history that speaks
 * against teaching once more; what is left can be taught.
 *
 * @param state of the phase, of which the sensor's part is off
 * @returns one step with its reasons
 * Source: own choice of rules and limits (`usualThresholds`); `reteach` for what a zero and a span can do at best.
 * @example sensorStep(state).action // "re-teach"
 */
export function sensorStep(state: PhaseState): RecommendedStep {
  if (state.judged !== "signal") return notSeparable(state);
  const forecast = state.sensor?.forecast ?? null;
  if (forecast === null || forecast.best === null) return tooFewReadings();
  const { scatter, thresholds } = state;
  if (typeof scatter === "number" && exceeds(scatter, thresholds.replaceScatterFrom)) {
    return replaceForScatter(scatter, state);
  }
  const known = { ...forecast, best: forecast.best };
  return forecast.isCurable === true ? taughtOrWornOut(known, state) : notCurable(known, state);
}

function notCurable(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const isBeyond = exceeds(forecast.best.part, state.thresholds.replaceResidualFrom);
  return forecast.isCurable === false && isBeyond
    ? replaceForResidual(forecast, state)
    : betterStandard(forecast, state);
}

function taughtOrWornOut(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const { drift, thresholds } = state;
  if (drift.isTaughtTwice) {
    return replaceForDrift(state, "it was taught anew twice running and drifted the same way after both");
  }
  if (drift.growth !== null && drift.growth > thresholds.driftGrowthMax) {
    return replaceForDrift(state, `its drift is more than ${thresholds.driftGrowthMax} times as fast as before`);
  }
  return teachStep(forecast, state);
}

function notSeparable({ judged }: PhaseState): RecommendedStep {
  const [read, both] =
    judged === "counts"
      ? ["raw counts were", "sensor and input card"]
      : ["controller's value was", "sensor and controller"];
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: "Read the sensor's signal as well, at every point.",
    rule: "without the signal nothing tells which stage of the loop is off",
    reasons: [`Only the ${read} read: the error may arise in ${both} alike.`],
  });
}

function tooFewReadings(): RecommendedStep {
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: "Read the loop again at five points or more, out and back.",
    rule: "too few usable readings for a zero and a span",
    reasons: ["The readings that can be used give no zero and span, so nothing tells what a re-teach would leave."],
  });
}
