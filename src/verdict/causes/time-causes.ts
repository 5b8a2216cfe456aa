import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Finding, rivalName } from "./finding.ts";
import { placeOf } from "./line-words.ts";
import { isSignificant, type StageEvidence } from "./stage-evidence.ts";

/**
 * Row 34: an error that moves with the time at which it was read, and not with the distance.
 *
 * @param evidence of a phase with at least two cycles
 * @returns a finding for each stage that drifts
 * Source: `driftInTime`.
 * @example timeCauses(evidence)[0].row // 34
 */
export function timeCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter((stage) => drifts(stage, evidence.mattering))
    .map((stage) => findingOf(evidence, stage));
}

/**
 * Whether the error of a stage moved with time by more than noise and by more than matters.
 *
 * @param stage of the loop
 * @param mattering smallest error that matters, percent of span
 * @returns true where it did
 * Source: own choice, see `thresholds`.
 * @example drifts(stage, 0.25) // false
 */
export function drifts({ drift, resolution }: StageEvidence, mattering: number): boolean {
  if (drift === undefined) return false;
  const { total, totalStandardUncertainty, degreesOfFreedom } = drift;
  return (
    Math.abs(total) > Math.max(mattering, resolution) &&
    isSignificant(total, totalStandardUncertainty, degreesOfFreedom)
  );
}

function findingOf({ isByClock, readings }: CauseEvidence, stage: StageEvidence): Finding {
  const { total, totalStandardUncertainty, rate } = stage.drift as NonNullable<StageEvidence["drift"]>;
  const duration = Math.max(...readings.map(({ elapsed }) => elapsed));
  return {
    row: 34,
    title: causeTitles[34] as string,
    stage: placeOf(stage.stage),
    says: "The same point read again later has another error, and the change goes on with time. This is consistent with a warm-up, or with something that drifted while the readings were taken.",
    evidence: [
      { name: "drift over the phase", value: total, unit: "% of span", standardUncertainty: totalStandardUncertainty },
      isByClock
        ? { name: "in one hour", value: 60 * rate, unit: "% of span" }
        : { name: "from one reading to the next", value: rate, unit: "% of span" },
      { name: isByClock ? "the phase took" : "readings", value: duration, unit: isByClock ? "min" : "" },
    ],
    rivals: [rivalName(20), "a reference, a bracket or a target that moved"],
    separatedBy:
      "read one point every ten minutes for an hour with the target fixed, and log the air temperature beside it",
  };
}
