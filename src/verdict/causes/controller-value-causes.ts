import type { Plateau } from "../../analysis/figures/plateau.ts";
import { axisCharacteristic, inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeNumber, placeOf, unitOf } from "./evidence/line-words.ts";
import { liveZeroMistake } from "./evidence/live-zero.ts";
import type { StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import { type Rounding, valueRounding } from "./evidence/value-grid.ts";

// A value that is not that of this loop; or one that is, and is clamped or cut.

/** The signal follows the target, and the value does not follow the signal. */
export const otherChannel: Cause = {
  id: "other-channel",
  title: "controller reads another channel",
  place: "input card",
  separatedBy: "simulate one signal at the terminals of this loop and see which channel and which tag move",
  remedy: {
    cures: "wiring",
    does: "find the channel that the controller really reads, and put address or terminals right",
  },
  detect: (evidence) =>
    stagesBehind(evidence)
      .filter((stage) => isCrossed(evidence, stage))
      .map((stage) => ({
        says: "The signal follows the target, and what the controller shows does not follow the signal. This is consistent with a channel, an address or a tag that belongs to another loop.",
        evidence: [
          { name: "correlation of signal and distance", value: evidence.stages[0]?.correlation ?? 0, unit: "" },
          { name: "correlation of value and signal", value: stage.correlation, unit: "" },
          { name: "readings", value: stage.readings.length, unit: "" },
        ],
        rivals: ["value-clamped-or-cut"],
      })),
};

/** The value stands still while the signal moves on, or moves in steps. */
export const clampedOrCut: Cause = {
  id: "value-clamped-or-cut",
  title: "controller value clamped or truncated",
  place: "scaling",
  separatedBy: "read the limits of the scaling block, and simulate a signal beyond the knee at the card",
  remedy: {
    cures: "scaling",
    does: "let the controller carry the value unclamped and in full: real numbers, not whole ones",
    isOfConstants: false,
  },
  detect: (evidence) =>
    stagesBehind(evidence)
      .filter((stage) => !isCrossed(evidence, stage))
      .flatMap((stage) => [...clamps(evidence, stage), ...truncation(evidence, stage)]),
};

function stagesBehind({ stages }: CauseEvidence): readonly StageEvidence[] {
  return stages.filter(({ input, stage }) => input !== "reference" && stage !== "wiring");
}

function isCrossed({ stages: [sensor] }: CauseEvidence, stage: StageEvidence): boolean {
  const isFollowing = sensor !== undefined && Math.abs(sensor.correlation) >= thresholds.surelyFollowsFrom;
  return isFollowing && stage.readings.length >= 5 && Math.abs(stage.correlation) < thresholds.followsFrom;
}

function clamps(evidence: CauseEvidence, stage: StageEvidence): readonly Sighting[] {
  const isCut = liveZeroMistake(evidence, stage) === "from-zero-scaled-as-live-zero";
  return stage.plateaus
    .filter(({ level }) => !(isCut && Math.abs(level) < 1))
    .map((plateau) => clampSighting(evidence, stage, plateau));
}

function clampSighting(evidence: CauseEvidence, stage: StageEvidence, plateau: Plateau): Sighting {
  const unit = unitOf(evidence, stage.output);
  const level = inUnitOf(evidence.loop, stage.output, plateau.level);
  const knee = inUnitOf(evidence.loop, stage.input, plateau.knee);
  return {
    stage: placeOf(stage.stage),
    says: `What the controller shows stands still at ${placeNumber(Number(level.toPrecision(4)))} ${unit} while the signal moves on. This is consistent with a clamp or an engineering limit in the controller.`,
    evidence: [
      { name: "value stands still at", value: level, unit },
      { name: "it follows up to", value: knee, unit: unitOf(evidence, stage.input) },
      { name: "farthest from the line of the rest", value: plateau.deviation, unit: "% of span" },
      { name: "readings there", value: plateau.members.length, unit: "" },
    ],
    rivals: [],
  };
}

function truncation(evidence: CauseEvidence, stage: StageEvidence): readonly Sighting[] {
  const { loop, mattering } = evidence;
  const characteristic = axisCharacteristic(loop, "value");
  if (stage.output !== "value" || characteristic === undefined) return [];
  const rounding = valueRounding(stage, loop, stage.readings, evidence.decimals.value ?? 0);
  const span = Math.abs(characteristic.outputAtUpper - characteristic.outputAtLower);
  if (rounding === undefined || (100 * rounding.step) / span < 2 * mattering) return [];
  return [truncationSighting(evidence, stage, rounding)];
}

function truncationSighting(
  evidence: CauseEvidence,
  stage: StageEvidence,
  { step, distinct, meanInSteps }: Rounding,
): Sighting {
  const unit = unitOf(evidence, "value");
  const isCutOff = Math.abs(meanInSteps + 0.5) <= thresholds.truncationWithin;
  return {
    stage: placeOf(stage.stage),
    says: `What the controller shows moves in steps of ${placeNumber(step)} ${unit}${isCutOff ? ", and lies about half a step low on average" : ""}. This is consistent with ${isCutOff ? "a division of whole numbers that cuts the fraction off" : "a scaling in whole numbers or a display that is too coarse"}.`,
    evidence: [
      { name: "step of the values", value: step, unit },
      { name: "different values", value: distinct, unit: "" },
      { name: "readings", value: stage.readings.length, unit: "" },
      { name: "mean error of the scaling", value: meanInSteps, unit: "steps" },
    ],
    rivals: isCutOff ? [] : ["display-too-coarse"],
    separatedBy: "compute one value by hand from its raw counts, and see whether the block uses whole numbers",
  };
}
