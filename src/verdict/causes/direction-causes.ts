import type { DirectionGap } from "../../analysis/figures/direction-gap.ts";
import { spanOf } from "../../model/range.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeOf } from "./evidence/line-words.ts";
import { drifts, isSignificant, type StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import type { Evidence } from "./finding.ts";

// Rising readings that lie apart from falling ones, the same way in every cycle (IEC 61298-2:2008 for the gap itself).
//
// Play in the rig leaves the same gap everywhere, at the two ends of the range too. A lag leaves half of it at the ends,
// where the target turned round and the output had settled once. A hysteresis closes at both ends.

const readAgain = {
  cures: "readings",
  does: "read again and wait longer at each point; if it must be as fast as this, shorten the filter",
} as const;
const longerDwell = "read one inner point again after five times the dwell, coming from below and from above";

/** The gap is smaller where the target turned round. */
export const notSettled: Cause = {
  id: "output-not-settled",
  title: "output not settled when it was read",
  place: "sensor",
  separatedBy: longerDwell,
  remedy: readAgain,
  detect: (evidence) =>
    sightings(evidence, "output-not-settled", (gap) =>
      isSameAtEnds(gap)
        ? "It is the same where the target turned round. This is consistent with a filter or a dead band in what follows the signal."
        : `${gap.outer === undefined ? "" : "It is smaller where the target turned round. "}This is consistent with an output that had not settled when it was read: a filter or damping.`,
    ),
};

function isSameAtEnds({ inner, outer }: DirectionGap): boolean {
  return outer !== undefined && outer / inner >= thresholds.playFrom;
}

/** The gap closes at both ends: the sensor itself, what guides the target, or the dwell. */
export const hysteresis: Cause = {
  id: "hysteresis-of-sensor",
  title: "hysteresis of the sensor or of what guides the target",
  place: "sensor",
  separatedBy: longerDwell,
  remedy: readAgain,
  remedyAt: { sensor: { cures: "sensor", does: null } },
  detect: (evidence) =>
    sightings(
      evidence,
      "hysteresis-of-sensor",
      () =>
        "It closes at both ends of the range. This is consistent with hysteresis of the sensor or of what guides the target, or with an output that had settled only at the ends.",
    ),
};

/** The gap is the same at the ends of the range. */
export const playInRig: Cause = {
  id: "play-in-rig",
  title: "play in the rig that moves the target",
  place: "rig",
  separatedBy:
    "approach one point from below and from above with the play taken up, or read it with another sensor on the same rig",
  remedy: {
    cures: "readings",
    does: "read again with the play of the rig taken up: come to each point from the same side",
  },
  detect: (evidence) =>
    sightings(
      evidence,
      "play-in-rig",
      () =>
        "The gap is the same at the ends of the range. This is consistent with play in the rig that moves the target.",
    ),
};

type GapCause = "output-not-settled" | "hysteresis-of-sensor" | "play-in-rig";

function sightings(
  evidence: CauseEvidence,
  cause: GapCause,
  wordsOf: (gap: DirectionGap) => string,
): readonly Sighting[] {
  return evidence.stages.flatMap((stage) => {
    const { gap } = stage;
    if (gap === undefined || !isApart(stage, gap, evidence.mattering)) return [];
    const named = causeOfGap(stage, gap);
    if (named.cause !== cause) return [];
    return [
      {
        stage: cause === "play-in-rig" ? "rig" : placeOf(stage.stage),
        says: `${gapWords(gap)} ${wordsOf(gap)}`,
        evidence: gapNumbers(evidence, gap),
        rivals: named.rivals,
      },
    ];
  });
}

function isApart(stage: StageEvidence, gap: DirectionGap, mattering: number): boolean {
  const { inner, innerStandardUncertainty, degreesOfFreedom, byCycle } = gap;
  const chance = byCycle.length === 1 ? thresholds.chanceOfNoiseInOneCycle : thresholds.chanceOfNoise;
  const isInEachCycle = byCycle.every((one) => one / inner >= thresholds.gapOfEachCycle);
  const isOverDrift = !drifts(stage, mattering) || Math.abs(inner) > Math.abs(stage.drift?.total ?? 0);
  return (
    Math.abs(inner) > Math.max(mattering, stage.resolution) &&
    isSignificant(inner, innerStandardUncertainty, degreesOfFreedom, chance) &&
    isInEachCycle &&
    isOverDrift
  );
}

function causeOfGap(stage: StageEvidence, gap: DirectionGap): { cause: GapCause; rivals: readonly GapCause[] } {
  const { inner, outer, outerStandardUncertainty } = gap;
  const isSensor = placeOf(stage.stage) === "sensor";
  const ratio = outer === undefined ? undefined : outer / inner;
  const unsure = ratio === undefined ? 1 : outerStandardUncertainty / Math.abs(inner);
  const mayBe = (limit: number, side: 1 | -1) => ratio === undefined || side * (ratio - limit) < 2 * unsure;
  if (isSensor && ratio !== undefined && ratio >= thresholds.playFrom) {
    // A target that is led beyond the ends and back leaves the gap of a lag, and of a hysteresis, at the ends as well.
    return { cause: "play-in-rig", rivals: ["output-not-settled", "hysteresis-of-sensor"] };
  }
  if (ratio !== undefined && ratio < thresholds.lagFrom) {
    return { cause: "hysteresis-of-sensor", rivals: ["output-not-settled"] };
  }
  const isPlayOpen = isSensor && mayBe(thresholds.playFrom, -1);
  return {
    cause: "output-not-settled",
    rivals: [...(isPlayOpen ? (["play-in-rig"] as const) : []), "hysteresis-of-sensor"],
  };
}

function gapWords({ inner }: DirectionGap): string {
  return `Rising readings lie ${inner < 0 ? "below" : "above"} falling ones, the same way in every cycle.`;
}

function gapNumbers({ loop, instrument }: CauseEvidence, gap: DirectionGap): Evidence[] {
  const { inner, outer } = gap;
  const distancePerPercent = spanOf(loop.characteristics.signal) / 100;
  return [
    {
      name: "rising minus falling, inside",
      value: inner,
      unit: "% of span",
      standardUncertainty: gap.innerStandardUncertainty,
    },
    { name: "the same in distance", value: inner * distancePerPercent, unit: instrument.distanceUnit },
    ...(outer === undefined
      ? []
      : [
          {
            name: "rising minus falling, at the ends",
            value: outer,
            unit: "% of span",
            standardUncertainty: gap.outerStandardUncertainty,
          },
        ]),
  ];
}
