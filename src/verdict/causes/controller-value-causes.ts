import type { Plateau } from "../../analysis/figures/plateau.ts";
import { axisCharacteristic, inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { placeNumber, placeOf, unitOf } from "./line-words.ts";
import { liveZeroRow } from "./live-zero-causes.ts";
import type { StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { valueRounding } from "./value-rounding.ts";

/**
 * Rows 28 and 31: a value that is clamped, truncated, or not that of this loop.
 *
 * @param evidence of a phase
 * @returns findings of the stages after the sensor
 * Source: own reckoning.
 * @example controllerValueCauses(evidence)[0].row // 28
 */
export function controllerValueCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter(({ input }) => input !== "reference")
    .filter(({ stage }) => stage !== "wiring")
    .flatMap((stage) => {
      const crossed = crossedChannel(evidence, stage);
      return crossed.length > 0 ? crossed : [...clamps(evidence, stage), ...truncation(evidence, stage)];
    });
}

function crossedChannel(evidence: CauseEvidence, stage: StageEvidence): readonly Finding[] {
  const sensor = evidence.stages[0];
  const isFollowing = sensor !== undefined && Math.abs(sensor.correlation) >= thresholds.surelyFollowsFrom;
  if (!isFollowing || stage.readings.length < 5 || Math.abs(stage.correlation) >= thresholds.followsFrom) return [];
  return [
    {
      row: 31,
      title: causeTitles[31] as string,
      stage: "input card",
      says: "The signal follows the target, and what the controller shows does not follow the signal. This is consistent with a channel, an address or a tag that belongs to another loop.",
      evidence: [
        { name: "correlation of signal and distance", value: sensor.correlation, unit: "" },
        { name: "correlation of value and signal", value: stage.correlation, unit: "" },
        { name: "readings", value: stage.readings.length, unit: "" },
      ],
      rivals: [rivalName(28)],
      separatedBy: "simulate one signal at the terminals of this loop and see which channel and which tag move",
    },
  ];
}

function clamps(evidence: CauseEvidence, stage: StageEvidence): readonly Finding[] {
  const isCut = liveZeroRow(evidence, stage) === 2;
  return stage.plateaus
    .filter(({ level }) => !(isCut && Math.abs(level) < 1))
    .map((plateau) => clampFinding(evidence, stage, plateau));
}

function clampFinding(evidence: CauseEvidence, stage: StageEvidence, plateau: Plateau): Finding {
  const unit = unitOf(evidence, stage.output);
  const level = inUnitOf(evidence.loop, stage.output, plateau.level);
  const knee = inUnitOf(evidence.loop, stage.input, plateau.knee);
  return {
    row: 28,
    title: causeTitles[28] as string,
    stage: placeOf(stage.stage),
    says: `What the controller shows stands still at ${placeNumber(Number(level.toPrecision(4)))} ${unit} while the signal moves on. This is consistent with a clamp or an engineering limit in the controller.`,
    evidence: [
      { name: "value stands still at", value: level, unit },
      { name: "it follows up to", value: knee, unit: unitOf(evidence, stage.input) },
      { name: "farthest from the line of the rest", value: plateau.deviation, unit: "% of span" },
      { name: "readings there", value: plateau.members.length, unit: "" },
    ],
    rivals: [],
    separatedBy: "read the limits of the scaling block, and simulate a signal beyond the knee at the card",
  };
}

function truncation(evidence: CauseEvidence, stage: StageEvidence): readonly Finding[] {
  const { loop, mattering } = evidence;
  const characteristic = axisCharacteristic(loop, "value");
  if (stage.output !== "value" || characteristic === undefined) return [];
  const rounding = valueRounding(stage, loop, stage.readings, evidence.decimals.value ?? 0);
  const span = Math.abs(characteristic.outputAtUpper - characteristic.outputAtLower);
  if (rounding === undefined || (100 * rounding.step) / span < 2 * mattering) return [];
  return [truncationFinding(evidence, stage, rounding, rounding.meanInSteps)];
}

function truncationFinding(
  evidence: CauseEvidence,
  stage: StageEvidence,
  grid: { step: number; distinct: number },
  meanInSteps: number,
): Finding {
  const unit = unitOf(evidence, "value");
  const isCutOff = Math.abs(meanInSteps + 0.5) <= thresholds.truncationWithin;
  const numbers: Evidence[] = [
    { name: "step of the values", value: grid.step, unit },
    { name: "different values", value: grid.distinct, unit: "" },
    { name: "readings", value: stage.readings.length, unit: "" },
    { name: "mean error of the scaling", value: meanInSteps, unit: "steps" },
  ];
  return {
    row: 28,
    title: causeTitles[28] as string,
    stage: placeOf(stage.stage),
    says: `What the controller shows moves in steps of ${placeNumber(grid.step)} ${unit}${isCutOff ? ", and lies about half a step low on average" : ""}. This is consistent with ${isCutOff ? "a division of whole numbers that cuts the fraction off" : "a scaling in whole numbers or a display that is too coarse"}.`,
    evidence: numbers,
    rivals: isCutOff ? [] : ["a display with too few decimals"],
    separatedBy: "compute one value by hand from its raw counts, and see whether the block uses whole numbers",
  };
}
