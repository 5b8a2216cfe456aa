import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { spanOf } from "../../model/range.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeOf } from "./evidence/line-words.ts";
import { isBowed, type StageEvidence } from "./evidence/stage-evidence.ts";

/** Mean errors that leave their straight line by more than repeated readings scatter, in a stage of the loop. */
export const curved: Cause = {
  id: "curved-characteristic",
  title: "curved characteristic",
  place: "sensor",
  separatedBy: "read the points again with another reference, and add a point on each side of the worst one",
  remedy: { cures: "sensor", does: null },
  detect: (evidence) =>
    evidence.stages.filter((stage) => isCurved(stage, evidence.mattering)).map((stage) => sightingIn(evidence, stage)),
};

/** A lag pulls the two ends in by a quarter of its gap: that is no curvature. */
function isCurved({ bow, gap, resolution }: StageEvidence, mattering: number): boolean {
  if (bow === undefined || !isBowed(bow)) return false;
  return Math.abs(bow.greatest) > Math.max(mattering, resolution, Math.abs(gap?.inner ?? 0) / 2);
}

function sightingIn({ loop, instrument }: CauseEvidence, stage: StageEvidence): Sighting {
  const { greatest, point, repeatability, standardUncertainty } = stage.bow as NonNullable<StageEvidence["bow"]>;
  const place = placeOf(stage.stage);
  return {
    stage: place,
    says: "The mean errors leave a straight line by more than readings of one point scatter, out and back alike. This is consistent with a curved characteristic, which no teaching of the ends takes away.",
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
    ...(place === "sensor"
      ? { rivals: ["reference-position-off", "obstruction-in-beam"] }
      : {
          rivals: ["value-clamped-or-cut"],
          separatedBy: "simulate the signal at five values and read what the controller makes of them",
        }),
  };
}
