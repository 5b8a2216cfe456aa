import { marked } from "../../units/decimal-mark.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { lineNumbers, placeOf } from "./evidence/line-words.ts";
import { liveZeroMistake } from "./evidence/live-zero.ts";
import { isOff, type StageEvidence } from "./evidence/stage-evidence.ts";

// A live zero where there is none, or none where there is one: in the controller, or at the sensor against the drawing.

const asDrawn = {
  cures: "set-up",
  does: "set the sensor's output to the signal that the drawing asks for",
} as const;
const inCard = {
  cures: "wiring",
  does: "set the channel of the input card to the signal that the drawing asks for",
} as const;
const remedyAt = { sensor: asDrawn, "input card": inCard };
const separatedBy = "read the configured range of the card's channel and the constants of the scaling";

/** p = 0.2 + 0.8p. */
export const liveZeroScaledFromZero: Cause = {
  id: "live-zero-scaled-from-zero",
  title: "live-zero signal (4–20 mA, 1–5 V) scaled as one from zero",
  place: "scaling",
  separatedBy,
  remedy: { cures: "scaling", does: "scale the signal in the controller for its live zero" },
  remedyAt,
  detect: (evidence) =>
    sightings(evidence, liveZeroScaledFromZero, "20 % too much at the low end and right at the high end, gain 0.8"),
};

/** p = 1.25p − 0.25. */
export const fromZeroScaledAsLiveZero: Cause = {
  id: "from-zero-scaled-as-live-zero",
  title: "signal from zero (0–20 mA, 0–5 V) scaled as a live-zero one",
  place: "scaling",
  separatedBy,
  remedy: { cures: "scaling", does: "scale the signal in the controller from zero" },
  remedyAt,
  detect: (evidence) =>
    sightings(
      evidence,
      fromZeroScaledAsLiveZero,
      "25 % too little at the low end and right at the high end, gain 1.25",
    ),
};

function sightings(evidence: CauseEvidence, { id, title }: Cause, shape: string): readonly Sighting[] {
  return evidence.stages
    .filter(
      (stage) =>
        isOff(stage, evidence.matteringAtEnds) && liveZeroMistake(evidence, stage) === id && stage.made === undefined,
    )
    .map((stage) => sightingIn(evidence, stage, title, shape));
}

/** Where only one of card and scaling lies between what was read. */
const rivalsBehind: Readonly<Partial<Record<StageEvidence["stage"], readonly string[]>>> = {
  "input card": ["range-of-card-wrong", "counts-row-wrong"],
  scaling: ["low-constant-wrong"],
};

function sightingIn(evidence: CauseEvidence, stage: StageEvidence, title: string, shape: string): Sighting {
  const place = placeOf(stage.stage);
  const where = place === "sensor" ? "the signal itself" : "what the controller makes of the signal";
  return {
    stage: place,
    says: `In ${where}: ${marked(shape)}. This is consistent with a ${title}.`,
    evidence: lineNumbers(evidence, stage),
    ...(place === "sensor"
      ? {
          rivals: ["ends-taught-wrong"],
          separatedBy: "read the output setting of the sensor, and compare its signal type with the drawing",
        }
      : { rivals: rivalsBehind[stage.stage] ?? ["low-constant-wrong", "range-of-card-wrong"] }),
  };
}
