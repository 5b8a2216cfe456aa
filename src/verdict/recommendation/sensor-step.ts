import { hysteresis } from "../causes/direction-causes.ts";
import { curved } from "../causes/shape-causes.ts";
import { numberWords } from "../loop-check/limit-words.ts";
import { exceeds } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import type { PhaseState } from "./phase-state.ts";
import { replaceForDrift, replaceForResidual, replaceForScatter } from "./replace-steps.ts";
import { leftWords, partWords, sentence } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";
import { betterStandard, type KnownForecast, teachStep } from "./teach-step.ts";

/**
 * What to do with a sensor that is off, where nothing around it explains why: teach it anew, replace it, or neither yet.
 *
 * In this order: readings that scatter too much before a target that was proved, an error that noise explains, a curve that no zero and span bring inside, a history that speaks
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
  const { scatter, leastScatter, isTargetProved, thresholds } = state;
  const isScattering = isTargetProved && exceeds(leastScatter, thresholds.replaceScatterFrom);
  if (isScattering && typeof scatter === "number") return replaceForScatter(scatter, state);
  const known = { ...forecast, best: forecast.best };
  if (isNoiseAlone(state)) return noTeach(known, state);
  return forecast.isCurable === true ? taughtOrWornOut(known, state) : notCurable(known, state);
}

/** Neither zero nor span is off by more than noise explains, and nothing that was found asks for a teach. */
function isNoiseAlone({ isLineOff, findings }: PhaseState): boolean {
  return isLineOff === false && !findings.some((finding) => remedyOf(finding).cures === "sensor");
}

function noTeach(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const { sensor, rule, scatter } = state;
  const isRefused = sensor !== null && !exceeds(sensor.worst, 100) && rule.name !== "simple acceptance";
  if (isRefused) return betterStandard(forecast, state);
  if (typeof scatter === "number" && !exceeds(scatter, state.thresholds.reteachScatterMax))
    return readWorst(scatter, state);
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: "Find what makes the readings scatter: read one point ten times with a large, flat, hard target square to the axis, then the loop again.",
    rule: "neither zero nor span is off by more than noise explains: a teach would only set the noise of a reading",
    reasons: [
      "The error of the mean line at both ends of the range lies within three of its standard uncertainties.",
      typeof scatter === "number"
        ? `Two standard deviations of repeated readings are ${partWords(scatter)}.`
        : `How far readings repeat is not determined: ${scatter.notDetermined}.`,
    ],
  });
}

/** What is off is neither the line nor the scatter: it sits at some points. */
function readWorst(scatter: number, { worstPoint, unit }: PhaseState): RecommendedStep {
  const at = worstPoint === null ? "the worst point" : numberWords(worstPoint.point, unit);
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: `Read ${at} and its neighbours again, out and back, with the distances set by another reference, before anything is adjusted.`,
    rule: "neither zero nor span is off by more than noise explains, and readings repeat: what is off sits at some points, and a teach would move all",
    reasons: [
      "The error of the mean line at both ends of the range lies within three of its standard uncertainties.",
      `Two standard deviations of repeated readings are ${partWords(scatter)}.`,
    ],
  });
}

function notCurable(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const { thresholds, findings } = state;
  const isBeyond = exceeds(forecast.best.part, thresholds.replaceResidualFrom);
  if (forecast.isCurable !== false || !isBeyond) return betterStandard(forecast, state);
  const isSteady = exceeds(forecast.steadyLeft ?? 0, thresholds.replaceResidualFrom);
  const isGapAlone = findings.some(({ id }) => id === hysteresis.id) && !findings.some(({ id }) => id === curved.id);
  if (isSteady && isGapAlone && state.isResponseProved !== true) return settledFirst(forecast, state);
  if (isSteady && findings.some(isOfShape)) return replaceForResidual(forecast, state);
  const isOff = findings.some((finding) => remedyOf(finding).cures === "sensor" && !isOfShape(finding));
  return isOff ? teachStep(forecast, state) : readAgain(forecast, state);
}

/** A gap that closes at both ends is that of an output that lags as well, until somebody waited long enough. */
function settledFirst({ best }: KnownForecast, state: PhaseState): RecommendedStep {
  const loop = state.findings.find(({ id }) => id === hysteresis.id);
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: `${sentence(hysteresis.separatedBy)} If the gap stays, replace the sensor or what guides its target; if it closes, wait so long at each point, or shorten the filter.`,
    rule: "a gap between the two ways is no hysteresis before the output had time to settle: a loop check that has its response or its filters in order says so as well",
    reasons: [
      `No re-teach can cure it: even the best zero and span leave ${leftWords(best, state)}.`,
      ...(loop === undefined ? [] : [reasonOf(loop)]),
    ],
  });
}

/** What no teaching takes away. */
function isOfShape({ id }: PhaseState["findings"][number]): boolean {
  return id === curved.id || id === hysteresis.id;
}

/** A single reading, or the scatter of all, is what no zero and span bring inside: that condemns no sensor. */
function readAgain({ best, whyNot }: KnownForecast, state: PhaseState): RecommendedStep {
  const { unit, scatter } = state;
  const at = whyNot === null ? "the worst point" : numberWords(whyNot.point, unit);
  return stepOf({
    action: "cannot be decided",
    of: "readings",
    does: `Read ${at} and its neighbours again, out and back, three times, with a large, flat, hard target square to the axis.`,
    rule: "no zero and span bring these very readings inside, but not without any one of them, not beyond what noise explains, or by no shape that has a name",
    reasons: [
      `The best zero and span leave ${leftWords(best, state)} of single readings; of their means it is not certain.`,
      typeof scatter === "number"
        ? `Two standard deviations of repeated readings are ${partWords(scatter)}.`
        : `How far readings repeat is not determined: ${scatter.notDetermined}.`,
    ],
  });
}

function taughtOrWornOut(forecast: KnownForecast, state: PhaseState): RecommendedStep {
  const { drift, thresholds } = state;
  if (drift.isTaughtTwice) {
    return replaceForDrift(state, "it was taught anew twice running and drifted the same way after both");
  }
  if (drift.growth !== null && drift.growth.atLeast > thresholds.driftGrowthMax) {
    return replaceForDrift(
      state,
      `its drift is more than ${thresholds.driftGrowthMax} times as fast as before, beyond what the uncertainty of both leaves open`,
    );
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
