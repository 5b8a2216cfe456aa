import { inUnitOf } from "../../../analysis/stages/staged-readings.ts";
import { isGasOfItsOwn, mediumOf } from "../../../model/medium.ts";
import { greatestOf } from "../../../numeric/least-and-greatest.ts";
import type { Sighting } from "../cause.ts";
import type { Evidence } from "../finding.ts";
import { airEvidence } from "./air-evidence.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { isLeakage } from "./leakage.ts";
import { errorWords, lineNumbers } from "./line-words.ts";
import { liveZeroMistake } from "./live-zero.ts";
import { onceFor } from "./once-for.ts";
import { atSignal, signalEnds, trueZero } from "./signal-order.ts";
import { isOff, lineErrorAt, type StageEvidence } from "./stage-evidence.ts";
import { type StatedAir, statedAirOf } from "./stated-air.ts";
import { isOverloadStated } from "./stated-load.ts";
import { thresholds } from "./thresholds.ts";
import { tiltThatFits, tiltThatShows } from "./tilt.ts";
import { isTurnedRound, missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/** Causes that the line of the error at the sensor can name, by their ids. */
type LineCause =
  | "slope-turned-round"
  | "datum-shifted"
  | "ends-taught-wrong"
  | "both-ends-taught-wrong"
  | "air-temperature"
  | "axis-tilted"
  | "target-tilted"
  | "voltage-output-overloaded"
  | "shunt-or-gain-off"
  | "leakage-across-loop";

type SensorRival = LineCause | "reference-position-off" | "reference-scale-off";

/** Places at which a line may be without error: nowhere, an end of the range, the face, the true zero of the signal. */
type Place = "nowhere" | "lower" | "upper" | "face" | "signal zero";

/** What the line of the error at the sensor is named, with the errors at its two ends in words. */
export type SensorLine = {
  cause: LineCause;
  /** The place without error, where one was found. */
  place?: Place;
  rivals: readonly SensorRival[];
  stage: StageEvidence;
  gain: number;
  near: string;
  far: string;
  /** What was taken off before. */
  before?: string;
};

/**
 * The sightings of one cause in the line of the error at the sensor.
 *
 * The place without error names the cause: nowhere (datum, mount, zero), an end of the range (teaching of the other end),
 * the face of the sensor (speed of sound, tilt), the true zero of the signal (overload, shunted source), the middle with
 * the slope turned round, or a point far above the signal (leakage).
 *
 * @param evidence of a phase
 * @param cause that asks
 * @param seen its words, and the numbers that it has besides those of the line
 * @returns one where the signal was read and its line has that name
 * Source: own reckoning; the choice between places by `namedByZero`.
 * @example sensorLineSightings(evidence, "datum-shifted", ({ near }) => ({ says: near })).length // 1
 */
export function sensorLineSightings(
  evidence: CauseEvidence,
  cause: LineCause,
  seen: (line: SensorLine) => Pick<Sighting, "says" | "separatedBy"> & { numbers?: Evidence[] },
): readonly Sighting[] {
  return sensorLines(evidence)
    .filter((line) => line.cause === cause)
    .map((line) => {
      const { says, numbers = [], ...words } = seen(line);
      const lines = lineNumbers(evidence, line.stage);
      return { ...words, says: `${line.before ?? ""}${says}`, evidence: [...lines, ...numbers], rivals: line.rivals };
    });
}

const sensorLines = onceFor((evidence): readonly SensorLine[] => {
  const stage = evidence.stages.find(({ stage: name }) => name === "sensor" || name === "sensor and wiring");
  if (stage === undefined || !isOff(stage, evidence.matteringAtEnds)) return [];
  if (liveZeroMistake(evidence, stage) !== undefined) return [];
  if (isTurnedRound(stage)) return [lineOf(evidence, stage, { cause: "slope-turned-round", rivals: [] })];
  const named = byPlace(evidence, stage);
  const air = named.cause === "air-temperature" ? undefined : statedAirOf(evidence, stage);
  if (air === undefined || !isTakenOff(named, stage, air)) return [lineOf(evidence, stage, named)];
  return airAndRest(evidence, stage, air);
});

function lineOf(evidence: CauseEvidence, stage: StageEvidence, named: Named): SensorLine {
  const wordsAt = (end: number) => errorWords(evidence, lineErrorAt(stage, end).percentSpan);
  return { ...named, stage, gain: gainOf(stage), near: wordsAt(0), far: wordsAt(100) };
}

/** A sensor of which nobody says that it does not correct may do so: its error is a plain shift, or less than without it. */
function isTakenOff({ cause }: Named, stage: StageEvidence, { isStatedUncorrected, rest }: StatedAir): boolean {
  const worst = (line: StageEvidence) =>
    greatestOf([0, 100].map((end) => Math.abs(lineErrorAt(line, end).percentSpan)));
  return isStatedUncorrected || (cause !== "datum-shifted" && worst(rest) < worst(stage));
}

/** What the stated air explains is taken off first and named; the rest is judged. */
function airAndRest(evidence: CauseEvidence, stage: StageEvidence, air: StatedAir): readonly SensorLine[] {
  const [near, far] = [errorWords(evidence, air.near), errorWords(evidence, air.far)];
  const ofAir: SensorLine = { cause: "air-temperature", place: "face", rivals: [], stage, gain: air.gain, near, far };
  if (!isOff({ ...air.rest, sharedUncertainty: stage.sharedUncertainty }, evidence.matteringAtEnds))
    return [{ ...ofAir, rivals: ["both-ends-taught-wrong"] }];
  const rest = byPlace(evidence, air.rest, false);
  const before = `The stated air explains ${far} at the far end, and that is taken off first. `;
  return [
    { ...ofAir, rivals: ["both-ends-taught-wrong"] },
    { ...lineOf(evidence, air.rest, rest), before },
  ];
}

type Named = Pick<SensorLine, "cause" | "place" | "rivals">;

function byPlace(evidence: CauseEvidence, stage: StageEvidence, isFaceOpen = true): Named {
  const places = placesOf(evidence, stage).filter(({ name }) => isFaceOpen || name !== "face");
  const { named, rivals } = namedByZero(stage, places);
  const open = rivals.flatMap((place) => causeAt(evidence, stage, place) ?? []);
  const isNamedLeak =
    named === undefined || (named === "nowhere" && missOf(stage, named) > thresholds.excludedBeyondUncertainties);
  if (isNamedLeak && isLeakage(evidence, stage)) {
    return {
      cause: "leakage-across-loop",
      rivals: [...(named === undefined ? [] : (["datum-shifted"] as const)), ...open, "both-ends-taught-wrong"],
    };
  }
  const cause = named === undefined ? undefined : causeAt(evidence, stage, named);
  if (named === undefined || cause === undefined) {
    const others = alwaysOpen(evidence, stage, "both-ends-taught-wrong").slice(1);
    return { cause: "both-ends-taught-wrong", rivals: ["datum-shifted", "ends-taught-wrong", ...open, ...others] };
  }
  const maybeLeak = named === "nowhere" && isLeakage(evidence, stage, true) ? (["leakage-across-loop"] as const) : [];
  return { cause, place: named, rivals: [...open, ...maybeLeak, ...alwaysOpen(evidence, stage, cause)] };
}

/** Where two places are the same point, the first is named. */
function placesOf(evidence: CauseEvidence, stage: StageEvidence): readonly ZeroCandidate<Place>[] {
  const ends = signalEnds(evidence.instrument);
  const face: ZeroCandidate<Place> = { name: "face", at: faceOf(evidence) };
  const range: ZeroCandidate<Place>[] = [
    { name: "lower", at: 0 },
    { name: "upper", at: 100 },
  ];
  const atFace = causeAtFace(evidence, stage);
  const zero: ZeroCandidate<Place>[] = isTooLittle(evidence, stage)
    ? [{ name: "signal zero", at: atSignal(ends, trueZero(ends)) }]
    : [];
  const isAirKnown = atFace === "air-temperature" && airEvidence(evidence, gainOf(stage)).agrees === true;
  return [
    { name: "nowhere", at: "nowhere" },
    ...(isAirKnown ? [face] : []),
    ...(isOverloadStated(evidence.instrument) ? zero : []),
    ...range,
    ...(atFace !== undefined && !isAirKnown ? [face] : []),
    ...zero,
  ];
}

/** The reference is the distance from the face of the sensor, so the face is at 0. */
function faceOf({ loop }: CauseEvidence): number {
  const perPercent = inUnitOf(loop, "reference", 1) - inUnitOf(loop, "reference", 0);
  return (0 - loop.characteristics.signal.rangeLower) / perPercent;
}

function causeAt(evidence: CauseEvidence, stage: StageEvidence, place: Place): LineCause | undefined {
  if (place === "nowhere") return "datum-shifted";
  if (place === "lower" || place === "upper") return "ends-taught-wrong";
  if (place === "face") return causeAtFace(evidence, stage);
  if (!isTooLittle(evidence, stage)) return undefined;
  return evidence.instrument.signalUnit === "V" ? "voltage-output-overloaded" : "shunt-or-gain-off";
}

/** An error that grows with the distance from the face: sound, a way that slants, an echo from beside the axis. */
function causeAtFace(
  evidence: CauseEvidence,
  stage: StageEvidence,
): "air-temperature" | "axis-tilted" | "target-tilted" | undefined {
  const { principle } = evidence.instrument;
  if (principle === undefined) return "air-temperature";
  const gain = gainOf(stage);
  if (principle === "ultrasonic" && !isAirExcluded(evidence, gain)) return "air-temperature";
  return tiltThatShows(evidence, gain);
}

/** The thermometer contradicts the gain, or the air is as warm as it was when the sensor was taught. */
function isAirExcluded(evidence: CauseEvidence, gain: number): boolean {
  const { taughtAt } = evidence.instrument;
  const { airTemperature } = evidence.calibration;
  if (isGasOfItsOwn(mediumOf(evidence.calibration, evidence.instrument))) return false;
  const isStated = taughtAt !== undefined && airTemperature !== undefined;
  const isSame = isStated && Math.abs(taughtAt - airTemperature) < sameAirWithin;
  return isSame || airEvidence(evidence, gain).agrees === false;
}

/** Own choice, K. */
const sameAirWithin = 1;

function gainOf(stage: StageEvidence): number {
  return stage.line?.gain ?? 1;
}

/** An overloaded voltage output gives too little everywhere, and so does a current that is shunted. */
function isTooLittle({ instrument }: CauseEvidence, stage: StageEvidence): boolean {
  const ends = signalEnds(instrument);
  const sign = ends.isReverse ? -1 : 1;
  return sign * lineErrorAt(stage, atSignal(ends, 100)).percentSpan < 0;
}

/** A scale that is off gives an error in proportion to the distance, and with a datum that is off any straight one. */
const ofGain: ReadonlySet<LineCause> = new Set([
  "ends-taught-wrong",
  "both-ends-taught-wrong",
  "axis-tilted",
  "target-tilted",
]);

/**
 * Both ends taught wrong give any straight error, and a datum of the reference that is off any shift: no reading on these
 * references excludes them. Where the air is named, a sensor or a target that stands askew may do the same.
 */
function alwaysOpen(evidence: CauseEvidence, stage: StageEvidence, cause: LineCause): readonly SensorRival[] {
  const gain = gainOf(stage);
  const isOfAirAlone =
    airEvidence(evidence, gain).agrees === true && evidence.instrument.temperatureCompensated !== true;
  const mayBeTilt = cause === "both-ends-taught-wrong" || (cause === "air-temperature" && !isOfAirAlone);
  const tilt = mayBeTilt ? tiltThatFits(evidence, gain) : undefined;
  return [
    "both-ends-taught-wrong",
    ...(cause === "datum-shifted" ? (["reference-position-off"] as const) : []),
    ...(ofGain.has(cause) || (cause === "air-temperature" && !isOfAirAlone) ? (["reference-scale-off"] as const) : []),
    ...(tilt === undefined ? [] : [tilt]),
  ];
}
