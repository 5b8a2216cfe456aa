import type { Plateau } from "../../analysis/figures/plateau.ts";
import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { greatestOf } from "../../numeric/least-and-greatest.ts";
import type { Cause, Sighting } from "./cause.ts";
import { burdenLimitedCurrent, fullSimulation } from "./evidence/burden-evidence.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { placeNumber, unitOf } from "./evidence/line-words.ts";
import { signalEnds } from "./evidence/signal-order.ts";
import { isOff, type StageEvidence } from "./evidence/stage-evidence.ts";
import { statedBlindZoneSightings } from "./evidence/stated-blind-zone.ts";
import { thresholds } from "./evidence/thresholds.ts";
import type { Evidence } from "./finding.ts";

// A signal that stands still at an end of the range while the rest is right, and echoes that are counted twice.
//
// Near end: blind zone. Far end: obstruction. At the limits of the measuring signal (3.8 and 20.5 mA, NAMUR NE 43): the
// target is beyond the range. At the great end of a current: perhaps not the distance stands still but the current, for
// want of voltage; a simulated 20 mA, or supply and burden, tell.

/** The current cannot rise any further. */
export const currentLimited: Cause = {
  id: "current-limited",
  title: "signal limited by supply and burden",
  place: "sensor",
  separatedBy: "simulate 20 mA at the sensor's end, and measure current, supply at the terminals and burden",
  remedy: { cures: "wiring", does: "give the loop more supply voltage or less burden" },
  detect: (evidence) =>
    standingSightings(
      evidence,
      "current-limited",
      "a current that supply and burden do not let rise any further",
      burdenNumbers(evidence),
    ),
};

/** Nothing nearer is seen, or it is seen at twice its distance. */
export const blindZone: Cause = {
  id: "blind-zone",
  title: "blind zone, or an echo counted twice",
  place: "sensor",
  separatedBy:
    "move the target out of the blind zone step by step and note where the signal begins to follow; simulate the signal there",
  remedy: {
    cures: "set-up",
    does: "keep the target out of the blind zone: move the sensor back, or begin the range farther out",
  },
  detect: (evidence) => [
    ...standingSightings(evidence, "blind-zone", "targets inside the blind zone of the sensor"),
    ...echoSightings(evidence),
    ...statedBlindZoneSightings(evidence),
  ],
};

/** Nothing farther is seen. */
export const obstruction: Cause = {
  id: "obstruction-in-beam",
  title: "fixed obstruction in the beam",
  place: "sensor",
  separatedBy: "look along the beam; take the target away and see whether the reading stays",
  remedy: { cures: "set-up", does: "take the obstruction out of the beam, or aim beside it" },
  detect: (evidence) =>
    standingSightings(
      evidence,
      "obstruction-in-beam",
      "a fixed object in the beam at that distance",
      burdenNumbers(evidence),
    ),
};

/** The signal stands at the limit of what it can say. */
export const beyondRange: Cause = {
  id: "target-beyond-range",
  title: "target beyond the range of the sensor",
  place: "sensor",
  separatedBy: "read the taught ends from the sensor and compare them with the range",
  remedy: {
    cures: "set-up",
    does: "keep the target inside the range of the sensor, or teach a range that fits",
  },
  detect: (evidence) =>
    standingSightings(
      evidence,
      "target-beyond-range",
      "targets beyond the range that the sensor was taught, at the limit of its signal",
    ),
};

/** Own choice, percent of span: a range taught wrong by less is an end taught wrong. */
const rangeEndWithin = 15;

type StandingCause = "current-limited" | "blind-zone" | "obstruction-in-beam" | "target-beyond-range";

function standingSightings(
  evidence: CauseEvidence,
  cause: StandingCause,
  consistentWith: string,
  numbers: Evidence[] = [],
): readonly Sighting[] {
  const sensor = evidence.stages.find(({ stage }) => stage === "sensor" || stage === "sensor and wiring");
  if (sensor === undefined || !follows(sensor)) return [];
  return sensor.plateaus
    .map((plateau) => ({ plateau, ...causeOfPlateau(evidence, plateau) }))
    .filter((one) => one.cause === cause && !isShiftAlone(evidence, one))
    .map(({ plateau, rivals }) => ({
      says: `${standingWords(evidence, plateau)} This is consistent with ${consistentWith}.`,
      evidence: [...plateauNumbers(evidence, sensor, plateau), ...numbers],
      rivals,
    }));
}

/** Railed only next to the end of the range, the line of the rest says all: a shift or a gain, no other range. */
function isShiftAlone(
  { railed, stages, matteringAtEnds }: CauseEvidence,
  { cause, plateau }: { cause: StandingCause; plateau: Plateau },
): boolean {
  const sensor = stages.find(({ stage }) => stage === "sensor" || stage === "sensor and wiring");
  const isNearEnd = plateau.end === "lower" ? plateau.knee < rangeEndWithin : plateau.knee > 100 - rangeEndWithin;
  const isExplained = sensor !== undefined && isOff(sensor, matteringAtEnds);
  const isRailed = plateau.members.every((member) => railed.includes(member));
  return cause === "target-beyond-range" && isNearEnd && isRailed && isExplained;
}

function follows({ correlation }: StageEvidence): boolean {
  return Math.abs(correlation) >= thresholds.followsFrom;
}

function causeOfPlateau(
  evidence: CauseEvidence,
  plateau: Plateau,
): { cause: StandingCause; rivals: readonly string[] } {
  const { instrument, loop } = evidence;
  const ends = signalEnds(instrument);
  const level = inUnitOf(loop, "signal", plateau.level);
  const above = (100 * (level - ends.high)) / (ends.high - ends.low);
  const below = (100 * (ends.low - level)) / (ends.high - ends.low);
  const standing: StandingCause = plateau.end === "lower" ? "blind-zone" : "obstruction-in-beam";
  const most = instrument.signalUnit === "mA" ? thresholds.saturationAbove : thresholds.voltageSaturationAbove;
  if (
    isBetween(above, -thresholds.saturationSlack, most) ||
    isBetween(below, -thresholds.saturationSlack, thresholds.saturationBelow)
  ) {
    return { cause: "target-beyond-range", rivals: [standing] };
  }
  const isGreatEnd = (plateau.end === "upper") !== ends.isReverse;
  if (instrument.signalUnit !== "mA" || !isGreatEnd) return { cause: standing, rivals: ["target-lost-held"] };
  const isLimited = limitedByBurden(evidence, level);
  if (isLimited === undefined) {
    return instrument.loopPowered === true
      ? { cause: "current-limited", rivals: [standing] }
      : { cause: standing, rivals: ["current-limited", "target-lost-held"] };
  }
  return isLimited ? { cause: "current-limited", rivals: [] } : { cause: standing, rivals: ["target-lost-held"] };
}

/** Undefined where neither a simulation nor supply and burden tell. */
function limitedByBurden(evidence: CauseEvidence, milliamps: number): boolean | undefined {
  const percentPerMilliamp = 100 / Math.abs(evidence.instrument.signalUpper - evidence.instrument.signalLower);
  const isLevel = (current: number) => Math.abs(current - milliamps) * percentPerMilliamp <= thresholds.burdenWithin;
  const simulated = fullSimulation(evidence);
  if (simulated !== undefined) return isLevel(simulated);
  const reckoned = burdenLimitedCurrent(evidence);
  return reckoned === undefined ? undefined : isLevel(reckoned.milliamps);
}

function isBetween(value: number, least: number, greatest: number): boolean {
  return value >= least && value <= greatest;
}

function standingWords({ instrument, loop }: CauseEvidence, plateau: Plateau): string {
  const level = placeNumber(Number(inUnitOf(loop, "signal", plateau.level).toPrecision(4)));
  const side = plateau.end === "lower" ? "nearer" : "farther";
  const knee = placeNumber(Number(inUnitOf(loop, "reference", plateau.knee).toPrecision(4)));
  return `The signal stands still at ${level} ${instrument.signalUnit} for every target ${side} than ${knee} ${instrument.distanceUnit}.`;
}

function plateauNumbers(evidence: CauseEvidence, sensor: StageEvidence, plateau: Plateau): Evidence[] {
  const { loop } = evidence;
  const last = sensor.line?.gain;
  return [
    {
      name: "signal stands still at",
      value: inUnitOf(loop, "signal", plateau.level),
      unit: unitOf(evidence, "signal"),
    },
    {
      name: "which stands for",
      value: inUnitOf(loop, "reference", plateau.level),
      unit: unitOf(evidence, "reference"),
    },
    { name: "it follows up to", value: inUnitOf(loop, "reference", plateau.knee), unit: unitOf(evidence, "reference") },
    { name: "farthest from the line of the rest", value: plateau.deviation, unit: "% of span" },
    { name: "readings there", value: plateau.members.length, unit: "" },
    ...(last === undefined ? [] : [{ name: "gain of the rest", value: last, unit: "" }]),
  ];
}

function burdenNumbers(evidence: CauseEvidence): Evidence[] {
  const simulated = fullSimulation(evidence);
  return [
    ...(simulated === undefined ? [] : [{ name: "simulated 20 mA gave", value: simulated, unit: "mA" }]),
    ...(burdenLimitedCurrent(evidence)?.evidence ?? []),
  ];
}

function echoSightings({ echoes, stages, readings, loop, instrument }: CauseEvidence): readonly Sighting[] {
  const isFollowed = stages.some(
    (one) => (one.stage === "sensor" || one.stage === "sensor and wiring") && follows(one),
  );
  if (echoes === undefined || !isFollowed) return [];
  const times = echoes.factor === 2 ? "twice" : "three times";
  const farthest = greatestOf(
    readings.filter(({ index }) => echoes.members.includes(index)).map(({ percent }) => percent.reference as number),
  );
  const place = inUnitOf(loop, "reference", farthest);
  return [
    {
      says: `Up to ${placeNumber(place)} ${instrument.distanceUnit} the sensor shows ${times} the distance. This is consistent with an echo counted ${times} inside the blind zone.`,
      evidence: [
        { name: "shown over true", value: echoes.factor, unit: "" },
        { name: "up to", value: place, unit: instrument.distanceUnit },
        { name: "readings there", value: echoes.members.length, unit: "" },
      ],
      rivals: [],
      separatedBy: "move the target out of the blind zone step by step and note where the signal begins to follow",
    },
  ];
}
