import type { Reading } from "../../model/calibration.ts";
import { spanOf } from "../../model/range.ts";
import { testPointsOf } from "../../model/test-points.ts";
import { copiedReadings } from "../plausibility/copied-readings.ts";
import { type IndicatedByStage, type StageShares, stageShares } from "../stages/stage-shares.ts";
import { stagedReadings } from "../stages/staged-readings.ts";
import { faultSide } from "./fault-signal.ts";
import { idealOutput } from "./ideal-characteristic.ts";
import { type Loop, type ReadStage, readStages, type Stage, stages } from "./loop.ts";
import { indicatedAt, type PointError, pointError } from "./point-errors.ts";
import { isRailOutside } from "./rail-outside.ts";
import { type Rail, railedReadings } from "./railed-readings.ts";
import { type ToleranceLimits, toleranceAt } from "./tolerance.ts";

/** What the operator sees too much or too little: in the controller's unit, in distance, in percent of span. */
export type LoopError = { value: number; distance: number; percentSpan: number };

/** Error of one reading as one stage of the loop gave it. */
export type StageError = { distance: number; percentSpan: number };

/** One reading with everything that follows from it alone. */
export type AnalysedReading = {
  reading: Reading;
  point: number;
  cycle: number;
  tolerance: ToleranceLimits;
  error?: PointError;
  loopError?: LoopError;
  /** The error of each stage that was read and has an ideal line, in the order of the loop. */
  stageErrors: Readonly<Partial<Record<ReadStage, StageError>>>;
  shares: StageShares;
  /** Why the reading is in no figure; a reading of the controller's value alone is in the figure of the loop error. */
  leftOut?: string;
  /** The end of the signal at which it stands, and says "at or beyond" in place of a number. */
  railed?: Rail["end"];
  /** Fails though it is in no figure: a fault signal inside the range, or an end of the signal where it should not stand. */
  isOutsideAnyway: boolean;
  /** What fails there is a later stage alone: the first one shows what it should. */
  isFirstInside?: true;
};

/** Smallest change that reference and signal could show, in the unit of each. */
export type Steps = { reference: number; signal: number };

/**
 * The quantity that a phase is judged by: the sensor's signal where it was read, else the counts, else the value.
 *
 * @param readings of one phase; those that somebody rejected count only where there are no others
 * @param loop the stages that have an ideal line
 * @returns the first stage, from the sensor on, that some reading has and the instrument describes; undefined where
 *   nothing that was read has an ideal line
 * Source: own choice: the error that the figures stand for is the sensor's wherever it can be had.
 * @example judgedStage([{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, counts: 13824 }],
 *   { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 }, counts: {
 *   rangeLower: 0, rangeUpper: 100, outputAtLower: 0, outputAtUpper: 27648 } }, toleranceTerms: [], faultLevels: {},
 *   signalUnit: "mA" }) // "counts"
 */
export function judgedStage(readings: readonly Reading[], loop: Loop): Stage | undefined {
  const kept = readings.filter(isKept);
  const read = kept.length > 0 ? kept : readings;
  return stages.find(
    (stage) => loop.characteristics[stage] !== undefined && read.some((reading) => reading[stage] !== undefined),
  );
}

/**
 * Everything that follows from single readings: indicated distance, errors, shares, tolerance there, and whether the
 * reading goes into the figures.
 *
 * A reading is left out where somebody rejected it, where it is a copy of another, where its signal reports a fault,
 * where that stands at an end of what it can say, or where nothing was read that has an ideal line. A rejected reading
 * neither shapes a test point nor counts as a cycle. A railed one is outside where the ideal signal is not at that end and
 * either its number or what the others say in its place is: beyond what it shows, it can only be worse.
 *
 * @param readings of one phase, in the order in which they were taken
 * @param loop what the loop is meant to do
 * @param judged the quantity that the errors stand for
 * @param steps smallest change that reference and signal could show; left out where they are exact
 * @returns one result a reading, in the same order; a cycle that is not given is counted by how often the same
 *   test point was read in the same direction before
 * Source: JCGM 200:2012, 2.16; NAMUR NE 43 for fault signals; `railedReadings`.
 * @example analyseReadings([{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.5 }],
 *   { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [], faultLevels: {}, signalUnit: "mA" }, "signal")[0].error.errorPercentSpan // 3.125
 */
export function analyseReadings(
  readings: readonly Reading[],
  loop: Loop,
  judged: Stage,
  steps?: Steps,
): readonly AnalysedReading[] {
  const rails = railsOf(readings, loop, steps);
  const points = nominalPoints(readings.filter(isKept), spanOf(loop.characteristics.signal));
  const copies = new Set(copiedReadings(readings).map(({ index }) => index));
  const seen = new Map<string, number>();
  return readings.map((reading, index) => {
    const isCopy = copies.has(index);
    const point = points.get(reading) ?? reading.point ?? reading.reference;
    const place = `${point} ${reading.direction}`;
    const times = (seen.get(place) ?? 0) + 1;
    if (isKept(reading) && !isCopy) seen.set(place, times);
    return analyseReading(reading, {
      ...{ loop, judged, point, cycle: reading.cycle ?? times, isCopy },
      rail: rails.find((rail) => rail.index === index),
    });
  });
}

/** From half of the tolerance on an error matters: own choice. */
const matteringPart = 0.5;

function railsOf(readings: readonly Reading[], loop: Loop, steps?: Steps): readonly Rail[] {
  const { signal } = loop.characteristics;
  const span = spanOf(signal);
  const { low, high } = toleranceAt(loop.toleranceTerms, signal, (signal.rangeLower + signal.rangeUpper) / 2);
  const perSignal = 100 / Math.abs(signal.outputAtUpper - signal.outputAtLower);
  return railedReadings(
    stagedReadings(readings, loop).readings.filter(({ reading }) => !isFault(reading, loop)),
    {
      loop,
      mattering: (matteringPart * 100 * Math.min(-low, high)) / span,
      step: steps === undefined ? 0 : Math.hypot((100 * steps.reference) / span, steps.signal * perSignal),
    },
  );
}

function isKept({ rejected }: Reading): boolean {
  return rejected === undefined;
}

function nominalPoints(readings: readonly Reading[], span: number): ReadonlyMap<Reading, number> {
  return new Map(
    testPointsOf(readings, span).flatMap(({ nominal, members }) =>
      members.map((member) => [readings[member] as Reading, nominal] as const),
    ),
  );
}

type ReadingContext = {
  loop: Loop;
  judged: Stage;
  point: number;
  cycle: number;
  isCopy: boolean;
  rail: Rail | undefined;
};

function analyseReading(reading: Reading, context: ReadingContext): AnalysedReading {
  const { loop, judged, point, cycle, rail } = context;
  const characteristic = loop.characteristics[judged];
  const output = reading[judged];
  const stageErrors = stageErrorsOf(reading, loop);
  const leftOut = whyLeftOut(reading, context, stageErrors);
  const loopError = loopErrorOf(reading, loop);
  const tolerance = toleranceAt(loop.toleranceTerms, loop.characteristics.signal, reading.reference);
  const isFaulty = isKept(reading) && isFault(reading, loop);
  const isOutsideAt = (stage: ReadStage | undefined) =>
    (isFaulty || isRailOutside(reading, rail, stage && stageErrors[stage]?.distance, loop)) && isInRange(reading, loop);
  const isOutsideAnyway = isOutsideAt(readStages.findLast((stage) => stageErrors[stage] !== undefined));
  return {
    reading,
    point,
    cycle,
    tolerance,
    ...(characteristic !== undefined &&
      output !== undefined && { error: pointError(characteristic, reading.reference, output) }),
    ...(loopError && { loopError }),
    stageErrors,
    shares: stageShares(reading.reference, indicatedByStage(reading, loop)),
    ...(leftOut !== undefined && { leftOut }),
    ...(rail && { railed: rail.end }),
    isOutsideAnyway,
    ...(isOutsideAnyway &&
      !isOutsideAt(readStages.find((stage) => stageErrors[stage] !== undefined)) && { isFirstInside: true }),
  };
}

/** Why a reading that only repeats the numbers of another is in no figure. */
export const copyWords = "a copy: the same numbers as another reading, to the last digit";

function whyLeftOut(
  reading: Reading,
  { loop, judged, isCopy, rail }: ReadingContext,
  stageErrors: AnalysedReading["stageErrors"],
): string | undefined {
  if (reading.rejected !== undefined) return `rejected: ${reading.rejected}`;
  if (isCopy) return copyWords;
  if (isFault(reading, loop)) {
    const side = faultSide(reading.signal as number, loop.faultLevels);
    const level = side === "low" ? loop.faultLevels.low : loop.faultLevels.high;
    return `fault signal: at or ${side === "low" ? "below" : "above"} ${level} ${loop.signalUnit}`;
  }
  if (rail !== undefined) {
    return `railed: ${reading.signal} ${loop.signalUnit} is the ${rail.end} end of what the signal can say; at or beyond, and no number`;
  }
  if (reading[judged] !== undefined) return undefined;
  return Object.keys(stageErrors).length > 0 ? undefined : `no ${judged} was read`;
}

function isFault({ signal }: Reading, { faultLevels }: Loop): boolean {
  return signal !== undefined && faultSide(signal, faultLevels) !== "none";
}

function isInRange({ reference }: Reading, { characteristics }: Loop): boolean {
  return reference >= characteristics.signal.rangeLower && reference <= characteristics.signal.rangeUpper;
}

function loopErrorOf({ reference, value }: Reading, { characteristics }: Loop): LoopError | undefined {
  if (value === undefined || characteristics.value === undefined) return undefined;
  const { errorDistance, errorPercentSpan } = pointError(characteristics.value, reference, value);
  return {
    value: value - idealOutput(characteristics.value, reference),
    distance: errorDistance,
    percentSpan: errorPercentSpan,
  };
}

function stageErrorsOf(reading: Reading, { characteristics }: Loop): AnalysedReading["stageErrors"] {
  const errors: Partial<Record<ReadStage, StageError>> = {};
  for (const stage of readStages) {
    const characteristic = characteristics[stage === "signalAtCard" ? "signal" : stage];
    const output = reading[stage];
    if (characteristic === undefined || output === undefined) continue;
    const { errorDistance, errorPercentSpan } = pointError(characteristic, reading.reference, output);
    errors[stage] = { distance: errorDistance, percentSpan: errorPercentSpan };
  }
  return errors;
}

/** The signal at the card is meant to be the signal of the sensor. */
function indicatedByStage(reading: Reading, { characteristics }: Loop): IndicatedByStage {
  const indicated: IndicatedByStage = {};
  for (const quantity of [...stages, "signalAtCard"] as const) {
    const characteristic = characteristics[quantity === "signalAtCard" ? "signal" : quantity];
    const output = reading[quantity];
    if (characteristic && output !== undefined)
      indicated[quantity] = indicatedAt(characteristic, reading.reference, output);
  }
  return indicated;
}
