import { greatestOf } from "../../numeric/least-and-greatest.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeOf } from "./evidence/line-words.ts";
import { drifts, type StageEvidence } from "./evidence/stage-evidence.ts";

/** An error that moves with the time at which it was read, and not with the distance, over at least two cycles. */
export const warmUpOrDrift: Cause = {
  id: "warm-up-or-drift",
  title: "warm-up or drift while the readings were taken",
  place: "sensor",
  separatedBy:
    "read one point every ten minutes for an hour with the target fixed, and log the air temperature beside it",
  remedy: {
    cures: "readings",
    does: "read again when the sensor has warmed up and the air is steady",
    isFirst: true,
  },
  detect: (evidence) =>
    evidence.stages.filter((stage) => drifts(stage, evidence.mattering)).map((stage) => sightingIn(evidence, stage)),
};

function sightingIn({ isByClock, readings }: CauseEvidence, stage: StageEvidence): Sighting {
  const { total, totalStandardUncertainty, rate } = stage.drift as NonNullable<StageEvidence["drift"]>;
  const duration = greatestOf(readings.map(({ elapsed }) => elapsed));
  return {
    stage: placeOf(stage.stage),
    says: "The same point read again later has another error, and the change goes on with time. This is consistent with a warm-up, or with something that drifted while the readings were taken.",
    evidence: [
      { name: "drift over the phase", value: total, unit: "% of span", standardUncertainty: totalStandardUncertainty },
      isByClock
        ? { name: "in one hour", value: 60 * rate, unit: "% of span" }
        : { name: "from one reading to the next", value: rate, unit: "% of span" },
      { name: isByClock ? "the phase took" : "readings", value: duration, unit: isByClock ? "min" : "" },
    ],
    rivals: ["air-temperature", "reference-moved"],
  };
}
