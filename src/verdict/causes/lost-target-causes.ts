import { inUnitOf } from "../../analysis/stages/staged-readings.ts";
import { mediumOf } from "../../model/medium.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import type { Cause, Sighting } from "./cause.ts";
import type { CauseEvidence } from "./evidence/cause-evidence.ts";
import { deadSignalSightings } from "./evidence/dead-signal.ts";
import { onceFor } from "./evidence/once-for.ts";
import { signalEnds } from "./evidence/signal-order.ts";
import { hasGrowingSpread, isSignificant, type StageEvidence } from "./evidence/stage-evidence.ts";
import { thresholds } from "./evidence/thresholds.ts";
import type { Evidence } from "./finding.ts";

// Readings at which the sensor had no target; a target too weak for the far part stands for the other two.

const keepTarget =
  "see to it that the sensor does not lose its target: clean face, square mount, a target that returns enough";

/** The scatter grows with the distance first. */
export const weakTarget: Cause = {
  id: "weak-target",
  title: "target too soft, too small or tilted for the far part of the range",
  place: "sensor",
  separatedBy: "read the far points again with a flat, hard plate that is square to the axis",
  remedy: { cures: "set-up", does: "use a larger, harder or better aligned target for the far part of the range" },
  detect: (evidence) => weakTargetSightings(evidence),
};

/** Fault signals here and there, or all the time (NAMUR NE 43). */
export const lostWithFault: Cause = {
  id: "target-lost-fault",
  title: "target lost, fault signal given",
  place: "sensor",
  separatedBy: "watch the sensor's target indicator and the supply at its terminals at these distances",
  remedy: { cures: "set-up", does: keepTarget },
  detect: (evidence) => [...neverSeen(evidence), ...(isWeak(evidence) ? [] : lostHereAndThere(evidence))],
};

function neverSeen(evidence: CauseEvidence): readonly Sighting[] {
  const says = "This is consistent with a sensor that never saw the target and reports a fault.";
  return deadSignalSightings(evidence, "target-lost-fault", says, ["current-and-voltage-mixed-up"]).map((sighting) => ({
    ...sighting,
    separatedBy: "see whether the target indicator of the sensor is lit at three distances",
  }));
}

function lostHereAndThere(evidence: CauseEvidence): readonly Sighting[] {
  const { faults, readings, slips } = evidence;
  const lost = faults.filter((index) => !slips.some((slip) => slip.index === index));
  if (lost.length === 0 || lost.length === readings.length) return [];
  const silent = isSilent(evidence, lost);
  const shown = silent ? "no signal at all" : "a fault instead of a distance";
  const wire = silent ? ", or with a wire or a supply that makes contact only now and then" : "";
  return [
    {
      says: `${countWords(lost.length, readings.length)} ${shown}. This is consistent with a sensor that loses its target there${wire}; it is no error of measurement.`,
      evidence: placesOf(evidence, lost),
      rivals: ["open-wire", "weak-target", ...(lost.length === 1 ? ["typing-error"] : [])],
    },
  ];
}

/** Of a signal that begins at zero: its lost readings stand at its low end, where no fault level is. */
function isSilent({ readings, instrument }: CauseEvidence, lost: readonly number[]): boolean {
  const { low, high } = signalEnds(instrument);
  const there = readings.filter(({ index }) => lost.includes(index));
  return low === 0 && there.every(({ reading }) => (reading.signal ?? reading.signalAtCard ?? high) < high / 2);
}

/** The reading is that of the point before, while other cycles are right there. */
export const lostAndHeld: Cause = {
  id: "target-lost-held",
  title: "target lost, last value held",
  place: "sensor",
  separatedBy: "set the action on a lost target to fault, and read these points again",
  remedy: { cures: "set-up", does: keepTarget },
  detect: (evidence) => (isWeak(evidence) ? [] : heldSightings(evidence)),
};

function heldSightings(evidence: CauseEvidence): readonly Sighting[] {
  const { held, readings } = evidence;
  if (held.length < 2) return [];
  return [
    {
      says: `${countWords(held.length, readings.length)} what the reading before had shown, though the target had moved on. This is consistent with a sensor that loses its target and holds its last value.`,
      evidence: placesOf(evidence, held),
      rivals: ["output-not-settled", "obstruction-in-beam"],
    },
  ];
}

/**
 * Whether the scatter grows with the distance for certain.
 *
 * @param evidence of a phase
 * @returns true where a weak target is named
 * Source: `weakTarget`.
 * @example isWeak(evidence) // false
 */
export function isWeak(evidence: CauseEvidence): boolean {
  return weakTargetSightings(evidence).length > 0;
}

/** What is in the way weakens an echo, or light, the more of it there is. */
function mediumWords({ calibration, instrument }: CauseEvidence): string {
  const medium = mediumOf(calibration, instrument);
  return medium === "air" ? "" : `, or with the ${medium} that is stated to be between`;
}

const weakTargetSightings = onceFor((evidence): readonly Sighting[] => {
  const sensor = evidence.stages.find(({ stage }) => stage === "sensor");
  if (sensor === undefined) return [];
  const lost = [...evidence.faults, ...evidence.held];
  const isLostFar = lost.length > 0 && lost.every((index) => isFar(evidence, index));
  if (!spreadGrows(sensor, evidence.mattering, isLostFar)) return [];
  const { near, far } = sensor.spread as NonNullable<StageEvidence["spread"]>;
  const after = lost.length === 0 ? "" : " and the target is lost at some far points";
  return [
    {
      says: `Repeated readings scatter more the farther the target is${after}. This is consistent with a target that is too soft, too small or tilted for the far part of the range${mediumWords(evidence)}.`,
      evidence: [
        { name: "scatter, near third", value: near, unit: "% of span" },
        { name: "scatter, far third", value: far, unit: "% of span" },
        ...placesOf(evidence, lost),
      ],
      rivals: ["target-lost-fault", "obstruction-in-beam"],
    },
  ];
});

function isFar({ readings }: CauseEvidence, index: number): boolean {
  return (readings.find((reading) => reading.index === index)?.point ?? 0) >= 50;
}

/** Where the target is lost at far points only, less growth is enough. */
function spreadGrows(stage: StageEvidence, mattering: number, isLostFar: boolean): boolean {
  if (stage.spread === undefined) return false;
  const { slopeInUncertainties, degreesOfFreedom } = stage.spread;
  const isSure = slopeInUncertainties > 0 && isSignificant(slopeInUncertainties, 1, degreesOfFreedom);
  const isLikely = isLostFar && slopeInUncertainties > thresholds.excludedBeyondUncertainties;
  return (isSure || isLikely) && hasGrowingSpread(stage, mattering);
}

function countWords(count: number, all: number): string {
  return `${count} of ${all} readings ${count === 1 ? "shows" : "show"}`;
}

function placesOf({ readings, loop, instrument }: CauseEvidence, indexes: readonly number[]): Evidence[] {
  const there = readings.filter(({ index }) => indexes.includes(index));
  if (there.length === 0) return [];
  const places = there.map(({ percent }) => percent.reference as number);
  const points = new Set(there.map(({ point }) => point));
  const others = readings.filter(({ index, point }) => points.has(point) && !indexes.includes(index));
  const unit = instrument.distanceUnit;
  const at = (percent: number) => Number(inUnitOf(loop, "reference", percent).toPrecision(6));
  return [
    { name: "such readings", value: there.length, unit: "" },
    { name: "nearest of them", value: at(leastOf(places)), unit },
    { name: "farthest of them", value: at(greatestOf(places)), unit },
    { name: "good readings at the same points", value: others.length, unit: "" },
  ];
}
