import type { Reading } from "../../model/calibration.ts";
import type { Direction } from "../../model/calibration-words.ts";
import { type Axis, axes } from "../../model/loop-stages.ts";
import { spanOf } from "../../model/range.ts";
import { readingTimes } from "../../model/reading-times.ts";
import { testPointsOf } from "../../model/test-points.ts";
import { copiedReadings } from "../plausibility/copied-readings.ts";
import { type Characteristic, idealOutput, indicatedDistance } from "../readings/ideal-characteristic.ts";
import type { Loop } from "../readings/loop.ts";

/** One reading with everything that was read of it in percent of span: 0 at the lower end of the range, 100 at the upper. */
export type StagedReading = {
  /** Place in the list of readings, rejected ones counted too. */
  index: number;
  reading: Reading;
  direction: Direction;
  cycle: number;
  /** Nominal position, percent of span. */
  point: number;
  /** Time since the first reading; by the clock, in minutes, or else by the order of the table, in readings. */
  elapsed: number;
  percent: Readonly<Partial<Record<Axis, number>>>;
};

/**
 * Puts everything that was read along a loop on one scale, so that the stages can be compared: percent of span.
 *
 * @param readings of one phase, in the order in which they were taken; rejected ones and copies are left out
 * @param loop the ideal line of each quantity; what has none is left out
 * @returns one result for each reading that nobody rejected, and whether `elapsed` is by the clock (minutes)
 * Source: the identity of `stageShares`; common practice of the trade.
 * @example stagedReadings([{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.5 }],
 *   { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [], faultLevels: {}, signalUnit: "mA" }).readings[0].percent // { reference: 50, signal: 53.125 }
 */
export function stagedReadings(
  readings: readonly Reading[],
  loop: Loop,
): { readings: readonly StagedReading[]; isByClock: boolean } {
  const copies = new Set(copiedReadings(readings).map(({ index }) => index));
  const kept = readings
    .map((reading, index) => ({ reading, index }))
    .filter(({ reading, index }) => !reading.rejected && !copies.has(index));
  const points = nominalPoints(
    kept.map(({ reading }) => reading),
    loop,
  );
  const minutes = minutesOf(kept.map(({ reading }) => reading));
  const seen = new Map<string, number>();
  const staged = kept.map(({ reading, index }, place) => {
    const key = `${points[place]} ${reading.direction}`;
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return {
      index,
      reading,
      direction: reading.direction,
      cycle: reading.cycle ?? times,
      point: percentOf(loop.characteristics.signal, points[place] as number),
      elapsed: minutes?.[place] ?? place,
      percent: percentByAxis(reading, loop),
    };
  });
  return { readings: staged, isByClock: minutes !== undefined };
}

/**
 * The line that a quantity should follow; the signal at the card is meant to be the signal of the sensor.
 *
 * @param loop with the lines of its stages
 * @param axis which quantity; the reference follows itself
 * @returns the line, or undefined where the instrument does not describe it
 * Source: own choice.
 * @example axisCharacteristic(loop, "signalAtCard") === loop.characteristics.signal // true
 */
export function axisCharacteristic(loop: Loop, axis: Axis): Characteristic | undefined {
  const { signal, counts, value } = loop.characteristics;
  if (axis === "reference") return { ...signal, outputAtLower: signal.rangeLower, outputAtUpper: signal.rangeUpper };
  return axis === "counts" ? counts : axis === "value" ? value : signal;
}

/**
 * Turns percent of span of a quantity back into its own unit: mm, mA, V, counts, the controller's unit.
 *
 * @param loop with the lines of its stages
 * @param axis which quantity; it has a line
 * @param percent of span, 0 at the lower end of the range
 * @returns the quantity in its unit
 * @throws TypeError where the instrument does not describe the quantity
 * Source: `idealOutput`.
 * @example inUnitOf(loop, "signal", 50) // 12
 */
export function inUnitOf(loop: Loop, axis: Axis, percent: number): number {
  const characteristic = axisCharacteristic(loop, axis);
  if (characteristic === undefined) throw new TypeError(`inUnitOf: no line for ${axis}`);
  const { rangeLower } = characteristic;
  return idealOutput(characteristic, rangeLower + (percent / 100) * spanOf(characteristic));
}

function percentByAxis(reading: Reading, loop: Loop): Partial<Record<Axis, number>> {
  const percent: Partial<Record<Axis, number>> = {};
  for (const axis of axes) {
    const characteristic = axisCharacteristic(loop, axis);
    const output = reading[axis];
    if (characteristic === undefined || output === undefined) continue;
    percent[axis] = percentOf(characteristic, indicatedDistance(characteristic, output));
  }
  return percent;
}

function percentOf(characteristic: Characteristic, distance: number): number {
  return (100 * (distance - characteristic.rangeLower)) / spanOf(characteristic);
}

function nominalPoints(readings: readonly Reading[], loop: Loop): readonly number[] {
  const nominal: number[] = [];
  for (const point of testPointsOf(readings, spanOf(loop.characteristics.signal))) {
    for (const member of point.members) nominal[member] = point.nominal;
  }
  return nominal;
}

/**
 * Times count only where every reading has one and the clock moved. Where they run backwards through the rows, one of the
 * two is wrong, and nothing is said of what moved with the time.
 */
function minutesOf(readings: readonly Reading[]): readonly number[] | undefined {
  const times = readingTimes(readings.map(({ time }) => time));
  return times?.backwardsAt === undefined ? times?.minutes : times.minutes.map(() => 0);
}
