import { type Plateau, type PlateauPoint, plateausOf } from "../../../analysis/figures/plateau.ts";
import { heldReadings } from "../../../analysis/readings/held-readings.ts";
import type { Loop } from "../../../analysis/readings/loop.ts";
import { errorOffLine, type StageEnds, stageLine } from "../../../analysis/stages/stage-lines.ts";
import { inUnitOf, type StagedReading } from "../../../analysis/stages/staged-readings.ts";
import type { Axis } from "../../../model/loop-stages.ts";
import { spanOf } from "../../../model/range.ts";
import { median } from "../../../numeric/median.ts";

/** The nearest test points, at which the sensor took the second or third echo for the first. */
export type Echoes = { factor: 2 | 3; members: readonly number[] };

/**
 * Where a stage's output stands still at an end of the range.
 *
 * @param ends of the stage
 * @param readings of it
 * @param leastDeviation percent of span
 * @param leastScatter percent of span
 * @returns plateaus by `plateausOf`
 * Source: own choice.
 * @example stagePlateaus(stage, evidence.readings, 0.25, 0.01) // []
 */
export function stagePlateaus(
  { input, output }: StageEnds,
  readings: readonly StagedReading[],
  leastDeviation: number,
  leastScatter: number,
): readonly Plateau[] {
  const points = pointsOf(readings, input, output);
  return plateausOf(points, leastDeviation, leastScatter);
}

function pointsOf(readings: readonly StagedReading[], input: Axis, output: Axis): readonly PlateauPoint[] {
  return [...grouped(readings).values()].flatMap((group) => {
    const complete = group.filter(({ percent }) => percent[input] !== undefined && percent[output] !== undefined);
    if (complete.length === 0) return [];
    return [
      {
        input: median(complete.map(({ percent }) => percent[input] as number)),
        outputs: complete.map(({ percent }) => percent[output] as number),
        members: complete.map(({ index }) => index),
      },
    ];
  });
}

function grouped(readings: readonly StagedReading[]): ReadonlyMap<number, readonly StagedReading[]> {
  const groups = new Map<number, StagedReading[]>();
  for (const reading of readings) {
    const group = groups.get(reading.point);
    if (group === undefined) groups.set(reading.point, [reading]);
    else group.push(reading);
  }
  return groups;
}

const echoFactors = [2, 3] as const;
const echoWithin = 0.03;
/** Next to the face of the sensor a shift of its zero weighs more than its gain. */
const echoWithinOfSpan = 0.005;

/**
 * The nearest test points, if the sensor shows two or three times the distance there and the truth farther away.
 *
 * @param readings with reference and signal
 * @param output the quantity that stands for the distance
 * @param loop for distances from percent of span
 * @returns factor and readings; undefined where the nearest point is not read so
 * Source: own choice: every reading of the point within 3 % of 2 or 3 times the distance, or 0.5 % of span.
 * @example countedTwice(evidence.readings, "signal", evidence.loop) // undefined
 */
export function countedTwice(readings: readonly StagedReading[], output: Axis, loop: Loop): Echoes | undefined {
  const nearest = [...grouped(readings).values()].sort((left, right) => pointOf(left) - pointOf(right));
  for (const factor of echoFactors) {
    const members: number[] = [];
    for (const group of nearest) {
      if (!group.every((reading) => isEcho(reading, output, loop, factor))) break;
      members.push(...group.map(({ index }) => index));
    }
    const isFar = readings.some((reading) => members.includes(reading.index) && isFarOff(reading, output, loop));
    if (isFar && isOffTheRest(readings, members, output, loop)) return { factor, members };
  }
  return undefined;
}

/** The others must be right where these are wrong: a shift or a gain alone can double the nearest distance, too. */
function isOffTheRest(
  readings: readonly StagedReading[],
  members: readonly number[],
  output: Axis,
  loop: Loop,
): boolean {
  const rest = readings.filter(({ index }) => !members.includes(index));
  const line = stageLine({ stage: "sensor", input: "reference", output }, rest, loop, 0);
  if (line === undefined) return false;
  return readings
    .filter(({ index }) => members.includes(index))
    .every(({ percent }) => {
      const given = percent.reference as number;
      const error = (percent[output] as number) - given;
      return Math.abs(errorOffLine(error, line.fit, given)) > Math.abs(error) / 2;
    });
}

function pointOf(group: readonly StagedReading[]): number {
  return group[0]?.point ?? 0;
}

/** Where twice the distance is more than the signal can say, it stands at or beyond its upper end. */
function isEcho({ percent }: StagedReading, output: Axis, loop: Loop, factor: number): boolean {
  const shown = percent[output];
  if (shown === undefined || percent.reference === undefined) return false;
  const distance = inUnitOf(loop, "reference", percent.reference);
  const indicated = inUnitOf(loop, "reference", shown);
  const isRailed = shown >= 100 && factor * distance >= indicated;
  const slack = Math.max(echoWithin * factor * distance, echoWithinOfSpan * spanOf(loop.characteristics.signal));
  return distance > 0 && (isRailed || Math.abs(indicated - factor * distance) < slack);
}

function isFarOff({ percent }: StagedReading, output: Axis, loop: Loop): boolean {
  const [given, shown] = [percent.reference ?? 0, percent[output] ?? 0];
  const off = inUnitOf(loop, "reference", shown) - inUnitOf(loop, "reference", given);
  return Math.abs(off) > 0.05 * spanOf(loop.characteristics.signal);
}

/** One alone may as well be a slip of the typing hand. */
const fewestHeld = 2;

/**
 * Readings at which the sensor held what it had shown before.
 *
 * @param ends of the stage from the reference
 * @param readings without those that are no measurement
 * @param leastDeviation percent of span
 * @param leastScatter percent of span
 * @returns indexes by `heldReadings`, none where only one reading looks so
 * Source: own choice.
 * @example heldStageReadings(stage, evidence.readings, 0.25, 0.01) // []
 */
export function heldStageReadings(
  { input, output }: StageEnds,
  readings: readonly StagedReading[],
  leastDeviation: number,
  leastScatter: number,
): readonly number[] {
  const ordered = readings.flatMap(({ index, point, percent }) => {
    const given = percent[input];
    const made = percent[output];
    return given === undefined || made === undefined ? [] : [{ index, point, input: given, output: made }];
  });
  const held = heldReadings(ordered, leastDeviation, leastScatter);
  return held.length < fewestHeld ? [] : held;
}
