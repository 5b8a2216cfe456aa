import { inUnitOf } from "../../../analysis/stages/staged-readings.ts";
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
import { thresholds } from "./thresholds.ts";
import { isTurnedRound, missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/** Causes that the line of the error at the sensor can name, by their ids. */
type LineCause =
  | "slope-turned-round"
  | "datum-shifted"
  | "ends-taught-wrong"
  | "both-ends-taught-wrong"
  | "air-temperature"
  | "target-or-sensor-tilted"
  | "voltage-output-overloaded"
  | "shunt-or-gain-off"
  | "leakage-across-loop";

/** Places at which a line may be without error: nowhere, an end of the range, the face, the true zero of the signal. */
type Place = "nowhere" | "lower" | "upper" | "face" | "signal zero";

/** What the line of the error at the sensor is named, with the errors at its two ends in words. */
export type SensorLine = {
  cause: LineCause;
  /** The place without error, where one was found. */
  place?: Place;
  rivals: readonly LineCause[];
  stage: StageEvidence;
  gain: number;
  near: string;
  far: string;
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
  seen: (line: SensorLine) => Pick<Sighting, "says"> & { numbers?: Evidence[] },
): readonly Sighting[] {
  const line = sensorLine(evidence);
  if (line?.cause !== cause) return [];
  const { says, numbers = [] } = seen(line);
  return [{ says, evidence: [...lineNumbers(evidence, line.stage), ...numbers], rivals: line.rivals }];
}

const sensorLine = onceFor((evidence): SensorLine | undefined => {
  const stage = evidence.stages.find(({ stage: name }) => name === "sensor" || name === "sensor and wiring");
  if (stage === undefined || !isOff(stage, evidence.mattering)) return undefined;
  if (liveZeroMistake(evidence, stage) !== undefined) return undefined;
  const named: Named = isTurnedRound(stage) ? { cause: "slope-turned-round", rivals: [] } : byPlace(evidence, stage);
  const wordsAt = (end: number) => errorWords(evidence, lineErrorAt(stage, end).percentSpan);
  return { ...named, stage, gain: stage.line?.gain ?? 1, near: wordsAt(0), far: wordsAt(100) };
});

type Named = Pick<SensorLine, "cause" | "place" | "rivals">;

function byPlace(evidence: CauseEvidence, stage: StageEvidence): Named {
  const { named, rivals } = namedByZero(stage, placesOf(evidence, stage));
  const open = rivals.flatMap((place) => causeAt(evidence, stage, place) ?? []);
  const isNamedLeak =
    named === undefined || (named === "nowhere" && missOf(stage, named) > thresholds.excludedBeyondUncertainties);
  if (isNamedLeak && isLeakage(evidence, stage)) {
    return { cause: "leakage-across-loop", rivals: named === undefined ? open : ["datum-shifted", ...open] };
  }
  const cause = named === undefined ? undefined : causeAt(evidence, stage, named);
  if (named === undefined || cause === undefined) {
    return { cause: "both-ends-taught-wrong", rivals: ["datum-shifted", ...open] };
  }
  const maybeLeak = named === "nowhere" && isLeakage(evidence, stage, true) ? (["leakage-across-loop"] as const) : [];
  return { cause, place: named, rivals: [...open, ...maybeLeak, ...alwaysOpen(evidence, cause)] };
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
  const isAirKnown = atFace === "air-temperature" && airEvidence(evidence, gainOf(stage)).agrees === true;
  return [
    { name: "nowhere", at: "nowhere" },
    ...(isAirKnown ? [face] : []),
    ...range,
    ...(atFace !== undefined && !isAirKnown ? [face] : []),
    ...(isTooLittle(evidence, stage) ? [{ name: "signal zero" as const, at: atSignal(ends, trueZero(ends)) }] : []),
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

/** An error that grows with the distance from the face: sound, or light that takes the long way. */
function causeAtFace(
  evidence: CauseEvidence,
  stage: StageEvidence,
): "air-temperature" | "target-or-sensor-tilted" | undefined {
  const { principle } = evidence.instrument;
  const gain = gainOf(stage);
  if (principle === "ultrasonic") return airEvidence(evidence, gain).agrees === false ? undefined : "air-temperature";
  const isOptical = principle === "laser" || principle === "photoelectric" || principle === "radar";
  if (isOptical) return gain > 1 ? "target-or-sensor-tilted" : undefined;
  return principle === undefined ? "air-temperature" : undefined;
}

function gainOf(stage: StageEvidence): number {
  return stage.line?.gain ?? 1;
}

/** An overloaded voltage output gives too little everywhere, and so does a current that is shunted. */
function isTooLittle({ instrument }: CauseEvidence, stage: StageEvidence): boolean {
  const ends = signalEnds(instrument);
  const sign = ends.isReverse ? -1 : 1;
  return sign * lineErrorAt(stage, atSignal(ends, 100)).percentSpan < 0;
}

/** A sensor that corrects for the air by itself may still stand askew. */
function alwaysOpen({ instrument }: CauseEvidence, cause: LineCause): readonly LineCause[] {
  const isOpen = cause === "air-temperature" && instrument.temperatureCompensated === true;
  return isOpen ? ["target-or-sensor-tilted"] : [];
}
