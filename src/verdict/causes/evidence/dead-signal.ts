import type { StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { greatestOf, leastOf } from "../../../numeric/least-and-greatest.ts";
import { median } from "../../../numeric/median.ts";
import type { Sighting } from "../cause.ts";
import type { CauseEvidence } from "./cause-evidence.ts";
import { placeNumber } from "./line-words.ts";
import { signalEnds } from "./signal-order.ts";
import { thresholds } from "./thresholds.ts";

/** Causes of a signal that never moves, by their ids. */
type StillCause = "open-wire" | "current-and-voltage-mixed-up" | "target-lost-fault" | "signal-at-its-end";

/**
 * The sighting of one cause in a signal that is the same whatever the distance is.
 *
 * No current or voltage: an open wire or no supply. Pinned above the range, or collapsed to little: a current output on a
 * voltage input, or the reverse. At a fault level all the time: the target was never seen. At an end of what it can say.
 *
 * @param evidence of a phase
 * @param cause that asks
 * @param consistentWith what its sentence adds
 * @param rivals ids of what is not excluded
 * @returns one where the signal stands still at a level of that cause
 * Source: own reckoning; NAMUR NE 43 for the fault levels.
 * @example deadSignalSightings(evidence, "open-wire", "", []).length // 0
 */
export function deadSignalSightings(
  evidence: CauseEvidence,
  cause: StillCause,
  consistentWith: string,
  rivals: readonly string[],
): readonly Sighting[] {
  const read = evidence.readings.filter(({ percent }) => percent.signal !== undefined);
  if (!isStill(read) || causeOfLevel(evidence, levelOf(read)) !== cause) return [];
  const level = levelOf(read);
  const unit = evidence.instrument.signalUnit;
  const says = `The signal stays at ${placeNumber(Number(level.toPrecision(3)))} ${unit} at every distance. ${consistentWith}`;
  const numbers = [
    { name: "signal, whatever the distance", value: level, unit },
    { name: "it moved by", value: rangeOf(read.map(({ percent }) => percent.signal as number)), unit: "% of span" },
    { name: "readings", value: read.length, unit: "" },
  ];
  return [{ says, evidence: numbers, rivals }];
}

function isStill(read: readonly StagedReading[]): boolean {
  const signals = read.map(({ percent }) => percent.signal as number);
  const references = read.map(({ percent }) => percent.reference as number);
  if (read.length < 3 || rangeOf(references) < 4 * thresholds.stillRange) return false;
  return rangeOf(signals) < thresholds.stillRange;
}

function rangeOf(values: readonly number[]): number {
  return greatestOf(values) - leastOf(values);
}

function levelOf(read: readonly StagedReading[]): number {
  return median(read.map(({ reading }) => reading.signal as number));
}

function causeOfLevel({ instrument, loop, railed, readings }: CauseEvidence, level: number): StillCause | undefined {
  const ends = signalEnds(instrument);
  const { low = ends.low, high = ends.high } = loop.faultLevels;
  const isCurrent = instrument.signalUnit === "mA";
  const nothing = isCurrent
    ? thresholds.noCurrentMilliamps
    : (thresholds.noVoltagePercent / 100) * (ends.high - ends.low);
  if (Math.abs(level) <= nothing) return "open-wire";
  if (isCurrent && level >= high) return "target-lost-fault";
  const pinned = ends.high + (thresholds.pinnedAbovePercent / 100) * (ends.high - ends.low);
  if (level > pinned) return "current-and-voltage-mixed-up";
  const collapsed = ends.low > 0 ? low : (thresholds.stillRange / 100) * ends.high;
  if (isCurrent && level < collapsed) return "current-and-voltage-mixed-up";
  const isAtEnd = readings.every(({ index, percent }) => percent.signal === undefined || railed.includes(index));
  return isAtEnd ? "signal-at-its-end" : undefined;
}
