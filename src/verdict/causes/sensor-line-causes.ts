import { isGasOfItsOwn, mediumOf } from "../../model/medium.ts";
import type { Cause } from "./cause.ts";
import { airEvidence } from "./evidence/air-evidence.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { errorWords, placeNumber } from "./evidence/line-words.ts";
import { sensorLineSightings } from "./evidence/sensor-line.ts";
import { lineErrorAt, type StageEvidence } from "./evidence/stage-evidence.ts";
import { isOverloadStated } from "./evidence/stated-load.ts";
import { tiltOf } from "./evidence/tilt.ts";
import type { Evidence } from "./finding.ts";

// What is wrong at the sensor, from the line of its error on the distance: `sensorLineSightings` chooses between them.

/** The slope of the line is turned round about the middle. */
export const slopeTurnedRound: Cause = {
  id: "slope-turned-round",
  title: "slope of the sensor taught the other way round",
  place: "sensor",
  separatedBy: "read the slope setting of the sensor, and what the drawing says about rising and falling",
  remedy: { cures: "sensor", does: null },
  detect: (evidence) =>
    sensorLineSightings(evidence, "slope-turned-round", () => ({
      says: "The signal falls where it is to rise, about the middle of the range. This is consistent with a slope that was taught the other way round, or with a loop declared the other way round than the drawing has it.",
    })),
};

/** The line has no slope. */
export const datumShifted: Cause = {
  id: "datum-shifted",
  title: "datum, mount or zero shifted",
  place: "sensor",
  separatedBy: "measure the distance from the datum to the face of the sensor, and compare with the drawing",
  remedy: {
    cures: "sensor",
    does: null,
    before: "See first that mount, datum and target sit where they belong: a teach would hide a bracket that slipped.",
  },
  detect: (evidence) =>
    sensorLineSightings(evidence, "datum-shifted", ({ stage }) => ({
      says: `The sensor is off by the same amount over the whole range, ${errorWords(evidence, middleOf(stage))}. This is consistent with a shifted datum, mount or zero.`,
    })),
};

function middleOf(stage: StageEvidence): number {
  return (lineErrorAt(stage, 0).percentSpan + lineErrorAt(stage, 100).percentSpan) / 2;
}

const taughtEnds = "read the taught ends from the sensor, or place the target at both ends and read the signal";

/** The line is without error at one end of the range. */
export const endsTaughtWrong: Cause = {
  id: "ends-taught-wrong",
  title: "ends of the range taught wrong",
  place: "sensor",
  separatedBy: taughtEnds,
  remedy: { cures: "sensor", does: null },
  detect: (evidence) =>
    sensorLineSightings(evidence, "ends-taught-wrong", ({ place, near, far }) => ({
      says:
        place === "lower"
          ? `The sensor is right at the near end of the range and ${far} at the far end. This is consistent with a far end that was taught wrong.`
          : `The sensor is right at the far end of the range and ${near} at the near end. This is consistent with a near end that was taught wrong.`,
    })),
};

/** The line is without error at no place that has a meaning. */
export const bothEndsTaughtWrong: Cause = {
  id: "both-ends-taught-wrong",
  title: "both ends of the range taught wrong",
  place: "sensor",
  separatedBy: taughtEnds,
  remedy: { cures: "sensor", does: null },
  detect: (evidence) =>
    sensorLineSightings(evidence, "both-ends-taught-wrong", ({ near, far }) => ({
      says: `The sensor is ${near} at the near end and ${far} at the far end. This is consistent with both ends taught wrong, or with a shifted datum and a gain together.`,
    })),
};

/** The line is without error at the face of the sensor, as warm or cold air leaves it. */
export const airTemperature: Cause = {
  id: "air-temperature",
  title: "speed of sound: the air is not as warm as the sensor takes it to be",
  place: "sensor",
  separatedBy: "log the air temperature at the sensor and at the target with every cycle",
  remedy: {
    cures: "set-up",
    does: "let the sensor correct for the air temperature, or use one that does; a re-teach would hold for the day's air only",
  },
  detect: (evidence) =>
    gasOf(evidence) === undefined
      ? sensorLineSightings(evidence, "air-temperature", ({ gain, near, far }) => ({
          says: `${growsFromFace(near, far)}.`,
          numbers: airEvidence(evidence, gain).evidence,
        }))
      : [],
};

/** The same where another gas than air is stated between sensor and target, whatever its temperature. */
export const otherGas: Cause = {
  id: "other-gas-than-air",
  title: "speed of sound: another gas than air between sensor and target",
  place: "sensor",
  separatedBy: "read once more with air between sensor and target, or reckon with the speed of sound in that gas",
  remedy: {
    cures: "set-up",
    does: "set the sensor for the speed of sound in that gas, or use a principle that the gas does not change; a correction for the air temperature does not mend it, and a re-teach would hold for that gas at that temperature only",
  },
  detect: (evidence) => {
    const gas = gasOf(evidence);
    if (gas === undefined) return [];
    return sensorLineSightings(evidence, "air-temperature", ({ near, far }) => ({
      says: `${growsFromFace(near, far)}: the medium is stated as ${gas}, and sound runs at another speed in it.`,
    }));
  },
};

function gasOf({ calibration, instrument }: CauseEvidence): string | undefined {
  const medium = mediumOf(calibration, instrument);
  return isGasOfItsOwn(medium) ? medium : undefined;
}

function growsFromFace(near: string, far: string): string {
  return `The error grows with the distance from the face of the sensor, ${near} at the near end and ${far} at the far end. This is consistent with a speed of sound other than the sensor reckons with`;
}

/** The line is without error at the face, and too long from there on: the way along a slanting axis is the longer one. */
export const axisTilted: Cause = {
  id: "axis-tilted",
  title: "axis of the sensor tilted against the references",
  place: "sensor",
  separatedBy:
    "measure the angle between the axis of the sensor and the way of the reference, and state it as alignment_angle",
  remedy: { cures: "set-up", does: "set the axis of the sensor along the way of the target" },
  detect: (evidence) =>
    sensorLineSightings(evidence, "axis-tilted", ({ gain, far }) => ({
      says: `The sensor reads long in proportion to the distance from its face, ${far} at the far end. This is consistent with an axis that is tilted against the way along which the references were measured. A target that is tilted before a straight axis does not do that.`,
      numbers: tiltNumbers(evidence, gain),
      ...(evidence.calibration.alignmentAngle !== undefined && {
        separatedBy: "read once more with the axis set along the way of the reference; its angle is stated already",
      }),
    })),
};

/** The line is without error at the face, and too short from there on: the echo comes from the foot of the perpendicular. */
export const targetTilted: Cause = {
  id: "target-tilted",
  title: "target tilted across the beam",
  place: "sensor",
  separatedBy: "measure the angle of the target, and read once more with the target squared up",
  remedy: { cures: "set-up", does: "set the target square to the axis of the sensor" },
  detect: (evidence) =>
    sensorLineSightings(evidence, "target-tilted", ({ gain, far }) => ({
      says: `The sensor reads short in proportion to the distance from its face, ${far} at the far end. This is consistent with a flat target that is tilted: its echo comes from where it stands square to the beam, which is nearer than the axis meets it.`,
      numbers: tiltNumbers(evidence, gain),
      ...(evidence.calibration.targetTilt !== undefined && {
        separatedBy: "read once more with the target squared up; its angle is stated already",
      }),
    })),
};

/** A long way needs an axis, a short one a target at this angle; what was stated of both stands beside it. */
function tiltNumbers({ calibration }: CauseEvidence, gain: number): Evidence[] {
  const { alignmentAngle, targetTilt } = calibration;
  return [
    { name: `tilt of the ${gain > 1 ? "axis" : "target"} that this gain needs`, value: tiltOf(gain), unit: "°" },
    ...(alignmentAngle === undefined ? [] : [{ name: "tilt of the axis as stated", value: alignmentAngle, unit: "°" }]),
    ...(targetTilt === undefined ? [] : [{ name: "tilt of the target as stated", value: targetTilt, unit: "°" }]),
  ];
}

/** The line is without error at 0 V, and too low from there on. */
export const voltageOverloaded: Cause = {
  id: "voltage-output-overloaded",
  title: "voltage output overloaded",
  place: "sensor",
  separatedBy: "measure the signal with the card disconnected",
  remedy: { cures: "wiring", does: "give the voltage output a higher load resistance" },
  detect: (evidence) =>
    sensorLineSightings(evidence, "voltage-output-overloaded", () => ({
      says: `The signal is too small in proportion to itself, from 0 V on. This is consistent with a voltage output that is loaded beyond what it can drive.${loadWords(evidence)}`,
    })),
};

function loadWords({ instrument }: CauseEvidence): string {
  if (!isOverloadStated(instrument)) return "";
  const [card, least] = [instrument.cardResistance, instrument.loadMin].map((one) => placeNumber(one as number));
  return ` The card is stated with ${card} Ω, where the output needs ${least} Ω at least.`;
}
