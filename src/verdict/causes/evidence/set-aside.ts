import { type ExchangedPair, exchangedReadings } from "../../../analysis/readings/exchanged-readings.ts";
import { wildReadings } from "../../../analysis/readings/wild-readings.ts";
import type { StagedReading } from "../../../analysis/stages/staged-readings.ts";
import type { Axis } from "../../../model/loop-stages.ts";
import { errorOf, hasGrowingSpread, type StageEvidence } from "./stage-evidence.ts";

/** Two rows whose outputs fit when exchanged. */
export type ExchangedRows = ExchangedPair & { axis: Axis };

/** A reading of one stage that its fellows contradict, percent of span. */
export type WildOfStage = { index: number; axis: Axis; deviation: number };

/** Readings that hide what the others say. */
export type ApartReadings = { exchanged: readonly ExchangedRows[]; wild: readonly WildOfStage[] };

/**
 * The readings that stand apart from all others of a phase: two rows exchanged, or a wild one.
 *
 * @param stages with the readings that each was judged by
 * @param readings of the phase
 * @param known indexes of readings that something else explains
 * @param mattering smallest error that matters, percent of span
 * @returns pairs, and wild readings that are in no pair; none of them where the scatter grows with the distance
 * Source: `exchangedReadings`, `wildReadings`.
 * @example apartReadings([stage], evidence.readings, new Set(), 0.25).wild // []
 */
export function apartReadings(
  stages: readonly StageEvidence[],
  readings: readonly StagedReading[],
  known: ReadonlySet<number>,
  mattering: number,
): ApartReadings {
  if (stages.some((stage) => hasGrowingSpread(stage, mattering))) return { exchanged: [], wild: [] };
  const unknown = readings.filter(({ index }) => !known.has(index));
  const exchanged = stages.slice(0, 1).flatMap((stage) => exchangedIn(stage, unknown, mattering));
  const paired = new Set(exchanged.flatMap(({ first, second }) => [first, second]));
  const wild = stages.flatMap((stage) => wildIn(stage, known, paired, mattering));
  return { exchanged, wild };
}

/**
 * All of them.
 *
 * @param apart of `apartReadings`
 * @returns indexes; a reading that is wild in two stages twice
 * Source: own choice.
 * @example membersOf({ exchanged: [], wild: [{ index: 4, axis: "signal", deviation: 9 }] }) // [4]
 */
export function membersOf({ exchanged, wild }: ApartReadings): readonly number[] {
  return [...exchanged.flatMap(({ first, second }) => [first, second]), ...wild.map(({ index }) => index)];
}

function exchangedIn(
  { input, output, resolution }: StageEvidence,
  readings: readonly StagedReading[],
  mattering: number,
): readonly ExchangedRows[] {
  const pairs = readings.flatMap(({ index, point, percent }) => {
    const [given, made] = [percent[input], percent[output]];
    return given === undefined || made === undefined ? [] : [{ index, point, input: given, output: made }];
  });
  return exchangedReadings(pairs, mattering, resolution / Math.sqrt(12)).map((pair) => ({ ...pair, axis: output }));
}

/** Of a stage that follows its input; a jump that comes again at its place is no wild reading. */
function wildIn(
  stage: StageEvidence,
  known: ReadonlySet<number>,
  paired: ReadonlySet<number>,
  mattering: number,
): readonly WildOfStage[] {
  const { output, resolution, line, readings } = stage;
  if (line === undefined) return [];
  const placed = readings
    .filter(({ index }) => !known.has(index) && !paired.has(index))
    .map((reading) => errorOf(reading, stage));
  const leastScatter = resolution / Math.sqrt(12);
  return wildReadings(placed, { mattering, leastScatter }).map((one) => ({ ...one, axis: output }));
}
