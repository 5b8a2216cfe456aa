import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { placeNumber } from "./line-words.ts";
import { hasGrowingSpread, isSignificant, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Rows 18, 19 and 25: readings at which the sensor had no target.
 *
 * Fault signals here and there; a held value (the reading is that of the point before, while other cycles are right
 * there); or, if the scatter grows with the distance first, a target that is too soft, small or tilted for the far part.
 *
 * @param evidence of a phase
 * @returns at most three findings; 25 stands for the others where it is found
 * Source: own choice; NAMUR NE 43 for fault signals.
 * @example lostTargetCauses(evidence)[0].row // 18
 */
export function lostTargetCauses(evidence: CauseEvidence): readonly Finding[] {
  const weak = weakTarget(evidence);
  return weak.length > 0 ? weak : [...lostWithFault(evidence), ...lostAndHeld(evidence)];
}

function lostWithFault(evidence: CauseEvidence): readonly Finding[] {
  const { faults, readings, slips } = evidence;
  const lost = faults.filter((index) => !slips.some((slip) => slip.index === index));
  if (lost.length === 0 || lost.length === readings.length) return [];
  return [
    {
      row: 18,
      title: causeTitles[18] as string,
      stage: "sensor",
      says: `${countWords(lost.length, readings.length)} a fault instead of a distance. This is consistent with a sensor that loses its target there; it is no error of measurement.`,
      evidence: placesOf(evidence, lost),
      rivals: [rivalName(29), rivalName(25)],
      separatedBy: "watch the sensor's target indicator and the supply at its terminals at these distances",
    },
  ];
}

function lostAndHeld(evidence: CauseEvidence): readonly Finding[] {
  const { held, readings } = evidence;
  if (held.length < 2) return [];
  return [
    {
      row: 19,
      title: causeTitles[19] as string,
      stage: "sensor",
      says: `${countWords(held.length, readings.length)} what the reading before had shown, though the target had moved on. This is consistent with a sensor that loses its target and holds its last value.`,
      evidence: placesOf(evidence, held),
      rivals: [rivalName(22), rivalName(16)],
      separatedBy: "set the action on a lost target to fault, and read these points again",
    },
  ];
}

function weakTarget(evidence: CauseEvidence): readonly Finding[] {
  const sensor = evidence.stages.find(({ stage }) => stage === "sensor");
  const { principle } = evidence.instrument;
  if (sensor === undefined || (principle !== "ultrasonic" && principle !== "radar" && principle !== undefined))
    return [];
  const lost = [...evidence.faults, ...evidence.held];
  const isLostFar = lost.length > 0 && lost.every((index) => isFar(evidence, index));
  if (!spreadGrows(sensor, evidence.mattering, isLostFar)) return [];
  const { near, far } = sensor.spread as NonNullable<StageEvidence["spread"]>;
  const after = lost.length === 0 ? "" : " and the target is lost at some far points";
  return [
    {
      row: 25,
      title: causeTitles[25] as string,
      stage: "sensor",
      says: `Repeated readings scatter more the farther the target is${after}. This is consistent with a target that is too soft, too small or tilted for the far part of the range.`,
      evidence: [
        { name: "scatter, near third", value: near, unit: "% of span" },
        { name: "scatter, far third", value: far, unit: "% of span" },
        ...placesOf(evidence, lost),
      ],
      rivals: [rivalName(18), rivalName(16)],
      separatedBy: "read the far points again with a flat, hard plate that is square to the axis",
    },
  ];
}

function isFar({ readings }: CauseEvidence, index: number): boolean {
  return (readings.find((reading) => reading.index === index)?.point ?? 0) >= 50;
}

/** Where the target is lost at far points only, less growth is enough. */
function spreadGrows(stage: StageEvidence, mattering: number, isLostFar: boolean): boolean {
  if (stage.spread === undefined) return false;
  const { slopeInUncertainties, degreesOfFreedom } = stage.spread;
  const isSure = slopeInUncertainties > 0 && isSignificant(slopeInUncertainties, 1, degreesOfFreedom);
  const isLikely = isLostFar && slopeInUncertainties > thresholds.excludedBeyondUncertainties;
  return (isSure || isLikely) && hasGrowingSpread(stage, mattering);
}

function countWords(count: number, all: number): string {
  return `${count} of ${all} readings ${count === 1 ? "shows" : "show"}`;
}

function placesOf({ readings, loop, instrument }: CauseEvidence, indexes: readonly number[]): Evidence[] {
  const there = readings.filter(({ index }) => indexes.includes(index));
  if (there.length === 0) return [];
  const places = there.map(({ percent }) => percent.reference as number);
  const points = new Set(there.map(({ point }) => point));
  const others = readings.filter(({ index, point }) => points.has(point) && !indexes.includes(index));
  const unit = instrument.distanceUnit;
  const at = (percent: number) => Number(placeNumber(inUnitOf(loop, "reference", percent)).replace("\u2212", "-"));
  return [
    { name: "such readings", value: there.length, unit: "" },
    { name: "nearest of them", value: at(Math.min(...places)), unit },
    { name: "farthest of them", value: at(Math.max(...places)), unit },
    { name: "good readings at the same points", value: others.length, unit: "" },
  ];
}
