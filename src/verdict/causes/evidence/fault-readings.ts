import { faultSide } from "../../../analysis/readings/fault-signal.ts";
import type { Loop } from "../../../analysis/readings/loop.ts";
import { errorOffLine, type StageLine, stageLine } from "../../../analysis/stages/stage-lines.ts";
import type { StagedReading } from "../../../analysis/stages/staged-readings.ts";
import type { Axis } from "../../../model/loop-stages.ts";
import { thresholds } from "./thresholds.ts";

/**
 * Readings whose signal reports a fault instead of a distance.
 *
 * A signal at a fault level that lies on the line of the other readings is a measurement after all: that is how a sensor
 * with an output from zero looks on a loop that is declared with a live zero. Where no signal was read, counts or the
 * controller's value of a live-zero loop are looked at instead.
 *
 * So is one that no output gives, and one that a later stage of its own row contradicts: counts or a value that lie on
 * their line say that the signal was noted wrong.
 *
 * A signal that begins at zero has no low fault level. There readings that show nothing are faults where they are several,
 * and other readings of the same test points show something: an output that stands at its low end shows it every time.
 *
 * @param readings of one phase
 * @param loop with its fault levels
 * @returns indexes of the readings
 * Source: NAMUR NE 43 for the levels; own choice for a signal from zero.
 * @example faultReadings(evidence.readings, evidence.loop) // []
 */
export function faultReadings(readings: readonly StagedReading[], loop: Loop): readonly number[] {
  const axis = firstRead(readings);
  if (axis === undefined) return [];
  const silent = silentReadings(readings, axis, loop);
  const suspects = readings.filter((reading) => isFault(reading, axis, loop) || silent.has(reading));
  const others = readings.filter((reading) => !suspects.includes(reading));
  const line = stageLine({ stage: "sensor", input: "reference", output: axis }, others, loop, 0);
  if (line === undefined) return suspects.map(({ index }) => index);
  const limit = Math.min(thresholds.slipWithinScatters * line.scatter + 1e-9, thresholds.onLineWithin);
  const off = suspects.filter(({ percent }) => {
    const given = percent.reference as number;
    return Math.abs(errorOffLine((percent[axis] as number) - given, line.fit, given)) > limit;
  });
  const laterLines = off.length === 0 ? [] : linesBehind(axis, others, loop);
  return withoutLoneSilent(off, silent)
    .filter((reading) => !isBeyondOutputs(reading, axis, loop) && !isContradicted(reading, laterLines))
    .map(({ index }) => index);
}

/** Own choice: NAMUR NE 43 begins the fault of 4–20 mA at 21 mA, and outputs are limited not far beyond. */
const mostMilliamps = 24;

function isBeyondOutputs({ reading }: StagedReading, axis: Axis, { signalUnit }: Loop): boolean {
  return signalUnit === "mA" && (axis === "signal" || axis === "signalAtCard") && (reading[axis] ?? 0) > mostMilliamps;
}

/** Own choice, percent of span. */
const atEndWithin = 0.5;

/** From the reference to each of the quantities that were read behind the first. */
function linesBehind(axis: Axis, others: readonly StagedReading[], loop: Loop): readonly StageLine[] {
  const later = outputsInTurn.slice(outputsInTurn.indexOf(axis) + 1);
  return later.flatMap((output) => stageLine({ stage: "sensor", input: "reference", output }, others, loop, 0) ?? []);
}

/** What was read behind it lies on the line of the others. */
function isContradicted({ percent }: StagedReading, laterLines: readonly StageLine[]): boolean {
  return laterLines.some(({ output, fit }) => {
    const made = percent[output];
    // At its own end it is limited there, and would be so whatever the signal is.
    if (made === undefined || made <= atEndWithin || made >= 100 - atEndWithin) return false;
    const given = percent.reference as number;
    return Math.abs(errorOffLine(made - given, fit, given)) <= thresholds.onLineWithin;
  });
}

/** One alone may as well be a slip of the typing hand. */
const fewestSilent = 2;

function withoutLoneSilent(
  off: readonly StagedReading[],
  silent: ReadonlySet<StagedReading>,
): readonly StagedReading[] {
  const isLone = off.filter((reading) => silent.has(reading)).length < fewestSilent;
  return isLone ? off.filter((reading) => !silent.has(reading)) : off;
}

/** Own choice, percent of span: nearer to the end at which the signal is zero a lag or a shift makes it so as well. */
const silentBeyond = 10;

/** No current and no voltage, where the signal begins at zero and the same test point shows something at other times. */
function silentReadings(readings: readonly StagedReading[], axis: Axis, loop: Loop): ReadonlySet<StagedReading> {
  const { outputAtLower, outputAtUpper } = loop.characteristics.signal;
  const isFromZero = Math.min(outputAtLower, outputAtUpper) === 0;
  if (!isFromZero || (axis !== "signal" && axis !== "signalAtCard")) return new Set();
  const isSilent = ({ reading }: StagedReading) =>
    100 * Math.abs(reading[axis] ?? Number.NaN) <=
    thresholds.noVoltagePercent * Math.abs(outputAtUpper - outputAtLower);
  const speaking = new Set(readings.filter((reading) => !isSilent(reading)).map(({ point }) => point));
  const isFarFromZero = ({ point }: StagedReading) => (outputAtUpper === 0 ? 100 - point : point) > silentBeyond;
  return new Set(readings.filter((one) => isSilent(one) && isFarFromZero(one) && speaking.has(one.point)));
}

const outputsInTurn: readonly Axis[] = ["signal", "signalAtCard", "counts", "value"];

function firstRead(readings: readonly StagedReading[]): Axis | undefined {
  return outputsInTurn.find((axis) => readings.some(({ percent }) => percent[axis] !== undefined));
}

function isFault({ reading, percent }: StagedReading, axis: Axis, loop: Loop): boolean {
  const output = reading[axis];
  if (output === undefined) return false;
  if (axis === "signal" || axis === "signalAtCard") return faultSide(output, loop.faultLevels) !== "none";
  if (loop.faultLevels.low === undefined && loop.faultLevels.high === undefined) return false;
  const { outputAtLower, outputAtUpper } = loop.characteristics.signal;
  const part = percent[axis];
  if (part === undefined) return false;
  const rising = outputAtUpper > outputAtLower ? part : 100 - part;
  return rising <= thresholds.faultPercentLow || rising >= thresholds.faultPercentHigh;
}
