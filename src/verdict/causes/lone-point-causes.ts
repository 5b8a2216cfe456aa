import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { errorWords, placeNumber, placeOf, unitOf } from "./evidence/line-words.ts";
import { type LoneInStage, lonePoints } from "./evidence/lone-points.ts";
import { isInStatedBlindZone } from "./evidence/stated-blind-zone.ts";

/** Off alike in all its readings, while all others lie on one line. */
export const onePointOff: Cause = {
  id: "one-point-off",
  title: "one test point off, alike in all its readings",
  place: "sensor",
  separatedBy: "set that distance by another reference, and read it again with a point on each side of it",
  remedy: {
    cures: "readings",
    does: "set that distance by another reference and look along the beam, then read it again with its neighbours; teach and replace nothing for one point",
  },
  remedyAt: {
    wiring: {
      cures: "wiring",
      does: "find what changes the signal between sensor and input card at this value",
    },
    "input card": {
      cures: "wiring",
      does: "simulate this signal at the card, and have the card looked at where it limits or misses it",
    },
    scaling: {
      cures: "scaling",
      does: "look in the controller at its limits, and at its table of the characteristic, at this value",
      isOfConstants: false,
    },
  },
  detect: (evidence) =>
    lonePoints(evidence)
      .filter(({ stage, lone }) => placeOf(stage.stage) !== "sensor" || !isInStatedBlindZone(evidence, lone))
      .map((one) => sightingOf(evidence, one)),
};

function sightingOf(evidence: CauseEvidence, { stage, lone }: LoneInStage): Sighting {
  const place = placeOf(stage.stage);
  const { reference, input } = placesOf(evidence, { stage, lone });
  const unit = evidence.instrument.distanceUnit;
  return {
    stage: place,
    says:
      place === "sensor"
        ? `The readings of one test point, ${placeNumber(reference)} ${unit}, are off by ${errorWords(evidence, lone.deviation)} from what all others say, and all alike. This is consistent with ${sensorWords(lone.end)}${stage.output === "value" ? ", or with a limit or a table in the controller" : ""}.`
        : `What is made of the signal is off at one test point only, ${placeNumber(reference)} ${unit}, by ${errorWords(evidence, lone.deviation)}, and alike each time. This is consistent with ${place === "wiring" ? "an isolator, a splitter or a barrier that limits it, or with too much burden" : "a limit, or with a wrong entry in a table of the characteristic"}.`,
    evidence: [
      { name: "distance from the line of the others", value: lone.deviation, unit: "% of span" },
      { name: "farthest of the others from it", value: lone.others, unit: "% of span" },
      ...(place === "sensor" ? [] : [{ name: "at", value: input, unit: unitOf(evidence, stage.input) }]),
      { name: "readings there", value: lone.members.length, unit: "" },
    ],
    ...(place === "sensor"
      ? {
          rivals: [
            "reference-position-off",
            lone.end === "lower" ? "blind-zone" : "obstruction-in-beam",
            ...(stage.output === "signal" || stage.output === "signalAtCard" ? [] : ["value-clamped-or-cut"]),
          ],
        }
      : {
          rivals: [place === "wiring" ? "current-limited" : "value-clamped-or-cut"],
          separatedBy: "simulate that signal, and one on each side of it, and read what is made of them",
        }),
  };
}

function sensorWords(end: LoneInStage["lone"]["end"]): string {
  const mark = "a reference position or a mark that is off there";
  if (end === "lower") return `${mark}, with the end of the sensor's blind zone, or with an end of its output`;
  if (end === "upper") return `${mark}, with something in the beam, or with an end of the sensor's output`;
  return `${mark}, or with something in the beam that the sensor sees at that distance only`;
}

function placesOf({ readings, loop }: CauseEvidence, { stage, lone }: LoneInStage) {
  const [first] = readings.filter(({ index }) => lone.members.includes(index));
  return {
    reference: inUnitOf(loop, "reference", first?.point ?? lone.point),
    input: inUnitOf(loop, stage.input, first?.percent[stage.input] ?? 0),
  };
}
