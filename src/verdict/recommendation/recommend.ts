import { type Asked, askedOf, countedFindings, isOfApart, isOfReadings } from "./asked.ts";
import { exceeds, reaches } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import { controllerPart, controllerStep, rescaleStep, scalingPart } from "./controller-step.ts";
import { leaveStep } from "./leave-step.ts";
import { completeStep, openStep, readingSteps, standardSteps, unreadStep } from "./open-steps.ts";
import { othersWords } from "./others-words.ts";
import type { PhaseState } from "./phase-state.ts";
import { cardRepairs, repairSteps } from "./repair-steps.ts";
import { sensorStep } from "./sensor-step.ts";
import { partWords, passingWords, worstOf } from "./state-words.ts";
import { type RecommendedStep, stepOf } from "./step.ts";
import { outputSteps, type SwitchStep, switchSteps } from "./switch-steps.ts";

/** What to do with a loop: the first step, and what to do after it. */
export type PhaseRecommendation = RecommendedStep & { also: RecommendedStep[] };

/**
 * What to do with a loop as one phase shows it: an opinion, that rests on what was judged and found before.
 *
 * Each step is to be proved before the next: set-up and wiring with the card, the controller, then the sensor, for what
 * lies behind it a teach would only hide; its switched outputs; last what has to be read again. A loop that passes, and asks for nothing, is left
 * as it is.
 *
 * @param state of the phase
 * @returns first step with its reasons, and the further ones in their order
 * Source: own choice of rules and limits (`usualThresholds`), after the trade's order: measure, mend what is around the
 *   sensor, re-teach or re-scale, replace last.
 * @example recommend(state).action // "re-teach"
 */
export function recommend(state: PhaseState): PhaseRecommendation {
  const [first, ...also] = stepsOf(state);
  if (first === undefined) throw new TypeError("recommend: there is always a step");
  return { ...first, also };
}

function stepsOf(state: PhaseState): readonly RecommendedStep[] {
  const asked = askedOf(state);
  const findings = countedFindings(state, asked);
  const outputs = switchSteps(state);
  if (state.isUnread) return unreadSteps(state, outputs);
  const isController = isControllerAsked(state, asked);
  const repairs = repairSteps(state, findings, [
    ...outputs.filter(({ of }) => of === "set-up" || of === "wiring"),
    ...(isController ? cardRepairs(state, findings) : []),
  ]);
  const sensor = asked.sensor ? sensorSteps(state, findings, repairs) : [];
  const isAlone = repairs.length + sensor.length === 0;
  const controller = isController ? controllerStep(state, findings, isAlone) : undefined;
  const steps = [
    ...repairs,
    ...(controller === undefined ? [] : [controller]),
    ...sensor,
    ...outputSteps(outputs),
    ...standardSteps(state),
    ...readingSteps(state, findings, othersWords(state, findings, recommend)),
  ];
  if (steps.length > 0) return asked.isPassing && isAnyAsked(asked) ? withWhyAsked(steps, state) : steps;
  if (state.statement !== null && asked.isPassing && !isAnyAsked(asked)) {
    return passingSteps(state);
  }
  return asked.controller && !asked.sensor ? [sumStep(state)] : [openStep(state)];
}

/** A rule that judges means may pass a loop with a reading that stands apart outside: that one is read again first. */
function passingSteps(state: PhaseState): readonly RecommendedStep[] {
  const { missing } = state;
  const worst = worstOf(state);
  const apart = exceeds(worst, 100) ? state.findings.filter(isOfApart) : [];
  const again = readingSteps(state, apart, othersWords(state, apart, recommend)).map((step) => ({
    ...step,
    reasons: [{ says: `${passingWords(worst, "It passes")}.` }, ...step.reasons],
  }));
  if (again.length > 0) return [...again, ...(missing.length > 0 ? [completeStep(state)] : [])];
  return [missing.length > 0 ? completeStep(state) : leaveStep(state)];
}

/** What was read before an adjustment asks for nothing after it; what the loop check and the outputs say stands. */
function unreadSteps(state: PhaseState, outputs: readonly SwitchStep[]): readonly RecommendedStep[] {
  const around = outputs.filter(({ of }) => of === "set-up" || of === "wiring");
  return [unreadStep(state), ...repairSteps({ ...state, stageParts: [] }, [], around), ...outputSteps(outputs)];
}

function isAnyAsked({ sensor, controller }: Asked): boolean {
  return sensor || controller;
}

/** Where only values were read, the sensor's part stands for the whole loop. */
function isControllerAsked({ judged }: PhaseState, asked: Asked): boolean {
  return asked.controller || (judged === "value" && asked.sensor);
}

/** A sensor is taught or replaced only for what nothing around it explains. */
function sensorSteps(
  state: PhaseState,
  findings: PhaseState["findings"],
  repairs: readonly RecommendedStep[],
): RecommendedStep[] {
  const remedies = findings.map(remedyOf);
  const cures = remedies.map((remedy) => remedy.cures);
  const isExplained = cures.some((place) => place === "set-up" || place === "wiring") || findings.some(isOfReadings);
  const isInSensor = cures.includes("sensor");
  const isUnsteady = remedies.some((remedy) => remedy.cures === "readings" && remedy.isFirst);
  if (isUnsteady || (isExplained && !isInSensor)) return [];
  if (state.judged === "value" && cures.includes("scaling")) return [];
  if (isFaultAlone(state)) return repairs.length > 0 ? [] : [faultStep(state)];
  const step = sensorStep(controllerIsOff(state) ? withoutMixedDrift(state) : state);
  const isFirst = repairs.length === 0 && !isExplained;
  if (isFirst) return [step];
  if (step.action !== "re-teach") return [];
  const isSetUpFirst = repairs.some(({ of }) => of === "set-up");
  return [
    {
      ...step,
      reasons: repairs.length === 0 ? step.reasons : [...step.reasons, { says: teachWhatIsLeft }],
      before: isSetUpFirst ? null : step.before,
    },
  ];
}

const teachWhatIsLeft = "Read again after what comes before it, and teach only what is still off.";

function controllerIsOff(state: PhaseState): boolean {
  return reaches(controllerPart(state), state.thresholds.stageShareFrom);
}

/** A history of what the controller showed says nothing of the sensor where the controller is off as well. */
function withoutMixedDrift(state: PhaseState): PhaseState {
  if (!state.drift.isOfWholeLoop) return state;
  return { ...state, drift: { ...state.drift, isTaughtTwice: false, growth: null } };
}

/** The distances that were measured are right; it is the fault signals between them that fail. */
function isFaultAlone({ faultReadings, sensor, thresholds }: PhaseState): boolean {
  const isErrorRight = sensor?.forecast?.now.statement === "pass" && !reaches(sensor.worst, thresholds.adjustAt);
  return faultReadings > 0 && isErrorRight;
}

function faultStep({ faultReadings }: PhaseState): RecommendedStep {
  const count = faultReadings === 1 ? "One reading" : `${faultReadings} readings`;
  return stepOf({
    action: "repair wiring or set-up",
    of: "set-up",
    does: "Find why the sensor reported a fault: target lost, face dirty, a wire that comes and goes.",
    rule: "a fault signal inside the range fails the loop, though what it measured is right",
    reasons: [
      `${count} inside the range reported a fault instead of a distance; every distance that was measured is inside.`,
    ],
  });
}

/** Beyond the sum of both by this factor, something else is in it: own choice, for what rounding and scatter add. */
const beyondSum = 1.1;

/**
 * No cause was found. Each stage passes by itself, and what they add up to does not: the one with the greater share is
 * worked on. What is more than both make together sits in what follows the signal, at some readings only.
 */
function sumStep(state: PhaseState): RecommendedStep {
  const part = controllerPart(state);
  const [ofSensor, ofAll] = [state.sensor?.worst ?? 0, state.controller?.worst ?? 0];
  const isMore = ofAll > beyondSum * (ofSensor + part);
  const isSensor = !isMore && ofSensor >= part;
  const [card] = part > scalingPart(state) ? repairSteps(state, [], cardRepairs(state, [])) : [];
  const step = isSensor ? sensorStep(state) : (card ?? rescaleStep(state, [], true));
  const greater = isSensor ? "sensor" : card === undefined ? "controller" : "input card";
  const reason = isMore
    ? `The worst reading of the value is ${partWords(ofAll)}, and sensor and line of the controller together make ${partWords(ofSensor + part)}: the rest sits in what follows the signal, at some readings, and no cause that is looked for is seen there.`
    : `Sensor and controller pass each by itself, but not what they add up to; the ${greater} has the greater share.`;
  return { ...step, reasons: [{ says: reason }, ...step.reasons] };
}

function withWhyAsked(
  [first, ...others]: readonly RecommendedStep[],
  { thresholds, sensor, controller }: PhaseState,
): readonly RecommendedStep[] {
  if (first === undefined) return [];
  const worst = Math.max(sensor?.worst ?? 0, controller?.worst ?? 0);
  const asked = `and adjusting is asked for from ${thresholds.adjustAt} % on.`;
  const why = exceeds(worst, 100)
    ? `${passingWords(worst, "It passes")}, ${asked}`
    : `It passes, but its worst reading is ${partWords(worst)}, ${asked}`;
  const isFor = ({ of }: RecommendedStep) => of === "sensor" || of === "controller";
  return [first, ...others].map((step) =>
    isFor(step) ? { ...step, reasons: [{ says: why }, ...step.reasons] } : step,
  );
}
