import type { StageName } from "../../model/loop-stages.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import type { Remedy } from "../causes/cause.ts";
import { reaches } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import type { PhaseState } from "./phase-state.ts";
import { partWords, sentence } from "./state-words.ts";
import { type RecommendedStep, reasonOf, stepOf } from "./step.ts";

/** New constants can be wrong in them. */
const scalingStages: readonly StageName[] = ["scaling", "input card and scaling"];
const stagesBehind: readonly StageName[] = ["input card", ...scalingStages];

/**
 * Greatest error of what lies between the signal and the value that the controller shows, over the tolerance.
 *
 * @param state of the phase
 * @returns part of the tolerance; 0 where nothing of it was read
 * Source: the lines of the stages.
 * @example controllerPart({ stageParts: [{ stage: "input card", part: 6.7 }] }) // 6.7
 */
export function controllerPart(state: Pick<PhaseState, "stageParts">): number {
  return partOf(state, stagesBehind);
}

/**
 * The part of it in which scaling constants lie: what the card makes of the signal before them is none of theirs.
 *
 * @param state of the phase
 * @returns part of the tolerance; 0 where the value was not read
 * Source: the lines of the stages.
 * @example scalingPart({ stageParts: [{ stage: "input card", part: 6.7 }] }) // 0
 */
export function scalingPart(state: Pick<PhaseState, "stageParts">): number {
  return partOf(state, scalingStages);
}

function partOf({ stageParts }: Pick<PhaseState, "stageParts">, stages: readonly StageName[]): number {
  return Math.max(0, greatestOf(stageParts.filter(({ stage }) => stages.includes(stage)).map(({ part }) => part)));
}

/**
 * New constants in the controller, where it is the controller that is off.
 *
 * @param state of the phase, of which the controller's part is off
 * @param findings that count in it
 * @param isAlone whether nothing in front of the controller is to be changed as well
 * @returns the step; nothing where the controller is right, or where its error is one of wiring or of another channel
 * Source: own choice; the shares of the stages are exact, so that an error of the scaling cannot be taken for one of the
 *   sensor.
 * @example controllerStep({ ...state, stageParts: [{ stage: "scaling", part: 6.7 }] }, [], true)?.action // "re-scale"
 */
export function controllerStep(
  state: PhaseState,
  findings: PhaseState["findings"],
  isAlone: boolean,
): RecommendedStep | undefined {
  const ofScaling = findings.filter((finding) => finding.stage !== "sensor" && remedyOf(finding).cures === "scaling");
  const isElsewhere = findings.some(
    (finding) => finding.stage === "input card" && remedyOf(finding).cures === "wiring",
  );
  const isOff = reaches(scalingPart(state), state.thresholds.stageShareFrom) && !isElsewhere;
  return ofScaling.length > 0 || isOff ? rescaleStep(state, ofScaling, isAlone) : undefined;
}

/**
 * New constants in the controller.
 *
 * @param state of the phase
 * @param ofScaling findings that new constants cure; none where only the controller's share is known
 * @param isAlone whether nothing in front of the controller is to be changed as well
 * @returns the step
 * Source: own choice.
 * @example rescaleStep(state, [], true).does // "Put the scaling constants in the controller right."
 */
export function rescaleStep(state: PhaseState, ofScaling: PhaseState["findings"], isAlone: boolean): RecommendedStep {
  const part = scalingPart(state);
  const remedies = ofScaling.map(remedyOf);
  const cures = remedies.flatMap(({ does }) => does ?? []);
  const doings = new Set(cures.length === 0 ? ["put the scaling constants in the controller right"] : cures);
  const isOfConstants = remedies.length === 0 || remedies.some(needsConstants);
  const constants = !isOfConstants
    ? null
    : isAlone && state.newConstants === "pass"
      ? "of the forecast"
      : "of the instrument's row";
  return stepOf({
    action: "re-scale",
    of: "controller",
    does: [...doings].map(sentence).join(" "),
    rule: "the controller makes something wrong of a signal, whatever the sensor gives: that is for the controller to put right",
    reasons: [
      ...ofScaling.map((finding) => reasonOf(finding)),
      ...(part > 0 && isOfConstants ? [`What the controller makes of the signal is off by ${partWords(part)}.`] : []),
      ...sensorReason(state),
      ...(constants === "of the instrument's row" && !isAlone ? [onceOnly] : []),
    ],
    before: beforeScaling(ofScaling),
    constants,
  });
}

function needsConstants(remedy: Remedy): boolean {
  return remedy.cures === "scaling" && remedy.isOfConstants !== false;
}

function beforeScaling(findings: PhaseState["findings"]): string | null {
  const open = findings.find(({ rivals }) => rivals.length > 0);
  return open === undefined ? null : `To be sure of the cause: ${open.separatedBy}.`;
}

const onceOnly =
  "Type in the constants that the loop is designed with: new constants from these readings would also make up for what the other steps cure, and count it twice.";

function sensorReason({ sensor, judged }: PhaseState): string[] {
  if (judged !== "signal" || sensor?.statement !== "pass") return [];
  return [`The sensor itself passes: its worst reading is ${partWords(sensor.worst)}.`];
}
