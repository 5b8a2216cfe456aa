import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { spanOf } from "../../model/range.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeOf } from "./evidence/line-words.ts";
import { errorOf, isBowed, type StageEvidence } from "./evidence/stage-evidence.ts";

const ofFunction = {
  cures: "scaling",
  does: "look in the controller for a function between signal and value, such as a table of a tank or a characterizer, and take it out or put it right",
  isOfConstants: false,
} as const;

/** Mean errors that leave their straight line by more than repeated readings scatter, in a stage of the loop. */
export const curved: Cause = {
  id: "curved-characteristic",
  title: "curved characteristic",
  place: "sensor",
  separatedBy: "read the points again with another reference, and add a point on each side of the worst one",
  remedy: { cures: "sensor", does: null },
  remedyAt: {
    "input card": { cures: "wiring", does: "simulate five values at the card, and have it adjusted or changed" },
    scaling: ofFunction,
  },
  detect: (evidence) =>
    evidence.stages
      .filter((stage) => isCurved(stage, evidence.mattering) && stage.made === undefined)
      .map((stage) => sightingIn(evidence, stage)),
};

/** A block that was copied from a loop that needs it. */
export const squareRootTaken: Cause = {
  id: "square-root-taken",
  title: "square root, or square, taken of a signal that is linear",
  place: "scaling",
  separatedBy: "read the settings of the card's channel and of the scaling block: one of them names a function",
  remedy: {
    cures: "scaling",
    does: "take the function out, at the card's channel or in the scaling block: the signal of a distance is linear",
    isOfConstants: false,
  },
  detect: ({ stages }) => stages.flatMap(functionSighting),
};

function functionSighting(stage: StageEvidence): readonly Sighting[] {
  const { made } = stage;
  if (made === undefined) return [];
  const errors = stage.readings.map((reading) => errorOf(reading, stage).error);
  const greatest = errors.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
  return [
    {
      stage: placeOf(stage.stage),
      says: `What is made of the signal is its ${made}, in parts of the span, at every reading. This is consistent with a function that was set in the controller or at the card's channel.`,
      evidence: [
        { name: "greatest error of the stage", value: greatest, unit: "% of span" },
        { name: "readings", value: stage.readings.length, unit: "" },
      ],
      rivals: [],
    },
  ];
}

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
