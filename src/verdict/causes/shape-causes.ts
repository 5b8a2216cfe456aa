import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { spanOf } from "../../model/range.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { causeTitles, type Finding, rivalName } from "./finding.ts";
import { placeOf } from "./line-words.ts";
import { isBowed, type StageEvidence } from "./stage-evidence.ts";

/**
 * Row 26: mean errors that leave their straight line by more than repeated readings scatter.
 *
 * @param evidence of a phase with repeated readings
 * @returns a finding for each stage that is curved
 * Source: `bowOf`; three standard deviations of a reading are own choice.
 * @example shapeCauses(evidence)[0].row // 26
 */
export function shapeCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter((stage) => isCurved(stage, evidence.mattering))
    .map((stage) => findingOf(evidence, stage));
}

/** A lag pulls the two ends in by a quarter of its gap: that is no curvature. */
function isCurved({ bow, gap, resolution }: StageEvidence, mattering: number): boolean {
  if (bow === undefined || !isBowed(bow)) return false;
  return Math.abs(bow.greatest) > Math.max(mattering, resolution, Math.abs(gap?.inner ?? 0) / 2);
}

function findingOf({ loop, instrument }: CauseEvidence, stage: StageEvidence): Finding {
  const { greatest, point, repeatability, standardUncertainty } = stage.bow as NonNullable<StageEvidence["bow"]>;
  const isSensor = placeOf(stage.stage) === "sensor";
  return {
    row: 26,
    title: causeTitles[26] as string,
    stage: placeOf(stage.stage),
    says: "The mean errors leave a straight line by more than repeated readings scatter, the same way in every cycle and direction. This is consistent with a curved characteristic, which no teaching of the ends takes away.",
    evidence: [
      { name: "greatest distance from the line", value: greatest, unit: "% of span", standardUncertainty },
      {
        name: "the same in distance",
        value: (greatest / 100) * spanOf(loop.characteristics.signal),
        unit: instrument.distanceUnit,
      },
      { name: "at", value: inUnitOf(loop, "reference", point), unit: instrument.distanceUnit },
      { name: "standard deviation of a reading", value: repeatability, unit: "% of span" },
    ],
    rivals: isSensor ? ["a reference position or a mark that is off", rivalName(16)] : [rivalName(28)],
    separatedBy: isSensor
      ? "read the points again with another reference, and add a point on each side of the worst one"
      : "simulate the signal at five values and read what the controller makes of them",
  };
}
