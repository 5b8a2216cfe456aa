import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { airEvidence } from "./air-evidence.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { type CausePlace, causeTitles, type Evidence, type Finding, rivalName } from "./finding.ts";
import { isLeakage, leakageNumbers } from "./leakage.ts";
import { errorWords, lineNumbers } from "./line-words.ts";
import { liveZeroRow } from "./live-zero-causes.ts";
import { atSignal, signalEnds, trueZero } from "./signal-order.ts";
import { isOff, lineErrorAt, type StageEvidence } from "./stage-evidence.ts";
import { thresholds } from "./thresholds.ts";
import { missOf, namedByZero, type ZeroCandidate } from "./zero-candidates.ts";

/**
 * Rows 8, 10, 11, 12, 14, 20, 21 and 24: what is wrong at the sensor, from the line of its error on the distance.
 *
 * The place without error names the cause: nowhere (datum, mount, zero), an end of the range (teaching of the other end),
 * the face of the sensor (speed of sound, tilt), the true zero of the signal (overload, shunted source), the middle with
 * the slope turned round, or a point far above the signal (leakage).
 *
 * @param evidence of a phase
 * @returns at most one finding, where the signal was read
 * Source: own reckoning; the choice between places by `namedByZero`.
 * @example sensorLineCauses(evidence)[0].row // 10
 */
export function sensorLineCauses(evidence: CauseEvidence): readonly Finding[] {
  return evidence.stages
    .filter(({ stage }) => stage === "sensor" || stage === "sensor and wiring")
    .filter((stage) => isOff(stage, evidence.mattering) && liveZeroRow(evidence, stage) === undefined)
    .map((stage) => findingOf(evidence, stage));
}

type Named = { row: number; rivals: readonly number[]; says: string; evidence?: Evidence[]; title?: string };

function findingOf(evidence: CauseEvidence, stage: StageEvidence): Finding {
  const {
    row,
    rivals,
    says,
    evidence: more = [],
    title,
  } = isTurnedRound(stage) ? turnedRound : namedByPlace(evidence, stage);
  return {
    row,
    title: title ?? (causeTitles[row] as string),
    stage: placeOfRow(row),
    says,
    evidence: [...lineNumbers(evidence, stage), ...more],
    rivals: [...new Set(rivals)].filter((rival) => rival !== row).map(rivalName),
    separatedBy: separations[row] as string,
  };
}

function placeOfRow(row: number): CausePlace {
  return row === 11 || row === 12 ? "wiring" : "sensor";
}

const turnedRound: Named = {
  row: 8,
  rivals: [],
  says: "The signal falls where it is to rise, about the middle of the range. This is consistent with a slope that was taught the other way round, or with a loop declared the other way round than the drawing has it.",
};

/** Place names: the two ends of the range, the face, the true zero of the signal. */
type Place = "nowhere" | "lower" | "upper" | "face" | "signal zero";

function namedByPlace(evidence: CauseEvidence, stage: StageEvidence): Named {
  const { named, rivals } = namedByZero(stage, placesOf(evidence, stage));
  const open = rivals.flatMap((place) => rowAt(evidence, stage, place) ?? []);
  const leak = isLeakage(evidence, stage);
  const isLeak =
    leak &&
    (named === undefined || (named === "nowhere" && missOf(stage, named) > thresholds.excludedBeyondUncertainties));
  if (isLeak) {
    return {
      row: 12,
      rivals: named === undefined ? open : [10, ...open],
      says: leakSays,
      evidence: leakageNumbers(evidence, stage),
    };
  }
  const row = named === undefined ? undefined : rowAt(evidence, stage, named);
  if (named === undefined || row === undefined) return bothEnds(evidence, stage, open);
  const alsoLeak = named === "nowhere" && isLeakage(evidence, stage, true) ? [12] : [];
  return {
    row,
    rivals: [...open, ...alsoLeak, ...alwaysOpen(evidence, named, row)],
    says: saysOf(evidence, stage, named, row),
    evidence: moreNumbers(evidence, stage, row),
  };
}

/** Where two places are the same point, the first is named. */
function placesOf(evidence: CauseEvidence, stage: StageEvidence): readonly ZeroCandidate<Place>[] {
  const ends = signalEnds(evidence.instrument);
  const face: ZeroCandidate<Place> = { name: "face", at: faceOf(evidence) };
  const range: ZeroCandidate<Place>[] = [
    { name: "lower", at: 0 },
    { name: "upper", at: 100 },
  ];
  const isAirKnown = rowAtFace(evidence, stage) === 20 && airEvidence(evidence, gainAboutFace(stage)).agrees === true;
  const isFaceThere = rowAtFace(evidence, stage) !== undefined;
  return [
    { name: "nowhere", at: "nowhere" },
    ...(isFaceThere && isAirKnown ? [face] : []),
    ...range,
    ...(isFaceThere && !isAirKnown ? [face] : []),
    ...(isTooLittle(evidence, stage) ? [{ name: "signal zero" as const, at: atSignal(ends, trueZero(ends)) }] : []),
  ];
}

/** The reference is the distance from the face of the sensor, so the face is at 0. */
function faceOf({ loop }: CauseEvidence): number {
  const perPercent = inUnitOf(loop, "reference", 1) - inUnitOf(loop, "reference", 0);
  return (0 - loop.characteristics.signal.rangeLower) / perPercent;
}

function rowAt(evidence: CauseEvidence, stage: StageEvidence, place: Place): number | undefined {
  if (place === "nowhere") return 10;
  if (place === "lower" || place === "upper") return 21;
  if (place === "face") return rowAtFace(evidence, stage);
  if (!isTooLittle(evidence, stage)) return undefined;
  return evidence.instrument.signalUnit === "V" ? 14 : 11;
}

/** An error that grows with the distance from the face: sound, or light that takes the long way. */
function rowAtFace(evidence: CauseEvidence, stage: StageEvidence): 20 | 24 | undefined {
  const { principle } = evidence.instrument;
  const gain = gainAboutFace(stage);
  if (principle === "ultrasonic") return airEvidence(evidence, gain).agrees === false ? undefined : 20;
  const isOptical = principle === "laser" || principle === "photoelectric" || principle === "radar";
  if (isOptical) return gain > 1 ? 24 : undefined;
  return principle === undefined ? 20 : undefined;
}

function gainAboutFace(stage: StageEvidence): number {
  return stage.line?.gain ?? 1;
}

/** An overloaded voltage output gives too little everywhere, and so does a current that is shunted. */
function isTooLittle({ instrument }: CauseEvidence, stage: StageEvidence): boolean {
  const ends = signalEnds(instrument);
  const sign = ends.isReverse ? -1 : 1;
  return sign * lineErrorAt(stage, atSignal(ends, 100)).percentSpan < 0;
}

function alwaysOpen({ instrument }: CauseEvidence, place: Place, row: number): readonly number[] {
  if (row === 20 && instrument.temperatureCompensated !== true) return [];
  return place === "face" && row === 20 ? [24] : [];
}

function bothEnds(evidence: CauseEvidence, stage: StageEvidence, open: readonly number[]): Named {
  return {
    row: 21,
    title: "both ends of the range taught wrong",
    rivals: [10, ...open],
    says: `The sensor is ${errorWords(evidence, lineErrorAt(stage, 0).percentSpan)} at the near end and ${errorWords(evidence, lineErrorAt(stage, 100).percentSpan)} at the far end. This is consistent with both ends taught wrong, or with a shifted datum and a gain together.`,
  };
}

const leakSays =
  "The signal is too great everywhere, and more so at its low end. This is consistent with a leakage across the two wires of the loop.";

function saysOf(evidence: CauseEvidence, stage: StageEvidence, place: Place, row: number): string {
  const near = errorWords(evidence, lineErrorAt(stage, 0).percentSpan);
  const far = errorWords(evidence, lineErrorAt(stage, 100).percentSpan);
  if (row === 10)
    return `The sensor is off by the same amount over the whole range, ${errorWords(evidence, (lineErrorAt(stage, 0).percentSpan + lineErrorAt(stage, 100).percentSpan) / 2)}. This is consistent with a shifted datum, mount or zero.`;
  if (place === "lower")
    return `The sensor is right at the near end of the range and ${far} at the far end. This is consistent with a far end that was taught wrong.`;
  if (place === "upper")
    return `The sensor is right at the far end of the range and ${near} at the near end. This is consistent with a near end that was taught wrong.`;
  if (row === 20)
    return `The error grows with the distance from the face of the sensor, ${near} at the near end and ${far} at the far end. This is consistent with a speed of sound other than the sensor reckons with.`;
  if (row === 24)
    return `The sensor reads long in proportion to the distance from its face, ${far} at the far end. This is consistent with a target or a sensor that is tilted against the axis.`;
  if (row === 14)
    return `The signal is too small in proportion to itself, from 0 V on. This is consistent with a voltage output that is loaded beyond what it can drive.`;
  return `The signal is too small in proportion to itself, from 0 mA on. This is consistent with a current of which a part is shunted before it is measured.`;
}

function moreNumbers(evidence: CauseEvidence, stage: StageEvidence, row: number): Evidence[] {
  const gain = gainAboutFace(stage);
  if (row === 20) return airEvidence(evidence, gain).evidence;
  if (row !== 24) return [];
  const angle: Evidence = {
    name: "tilt that this gain needs",
    value: (Math.acos(Math.min(1, 1 / gain)) * 180) / Math.PI,
    unit: "°",
  };
  const { targetTilt } = evidence.calibration;
  return targetTilt === undefined
    ? [angle]
    : [angle, { name: "tilt of the target as stated", value: targetTilt, unit: "°" }];
}

function isTurnedRound(stage: StageEvidence): boolean {
  const { line } = stage;
  if (line === undefined) return false;
  const slack = Math.max(thresholds.inverseGainWithin, 2 * line.gainStandardUncertainty);
  return Math.abs(line.gain + 1) <= slack && Math.abs(lineErrorAt(stage, 50).percentSpan) <= 100 * slack;
}

const separations: Readonly<Record<number, string>> = {
  8: "read the slope setting of the sensor, and what the drawing says about rising and falling",
  10: "measure the distance from the datum to the face of the sensor, and compare with the drawing",
  11: "measure the signal at both ends of the cable, and the resistance between the cores with the loop isolated",
  12: "measure the current at both ends of the cable, and the insulation between the cores with the loop isolated",
  14: "measure the signal with the card disconnected",
  20: "log the air temperature at the sensor and at the target with every cycle",
  21: "read the taught ends from the sensor, or place the target at both ends and read the signal",
  24: "measure the angle between the target and the axis, and read once more with the target squared up",
};
