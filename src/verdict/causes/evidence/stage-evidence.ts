import { type Bow, bowOf } from "../../../analysis/figures/bow.ts";
import { type DirectionGap, directionGap } from "../../../analysis/figures/direction-gap.ts";
import type { Plateau } from "../../../analysis/figures/plateau.ts";
import { type SpreadGrowth, spreadGrowth } from "../../../analysis/figures/spread-growth.ts";
import type { Loop } from "../../../analysis/readings/loop.ts";
import type { StageReading } from "../../../analysis/readings/repeated-readings.ts";
import {
  type StageEnds,
  type StageError,
  type StageLine,
  stageErrorAt,
  stageLine,
} from "../../../analysis/stages/stage-lines.ts";
import type { StagedReading } from "../../../analysis/stages/staged-readings.ts";
import { type DriftInTime, driftInTime, withoutDrift } from "../../../analysis/years/drift-in-time.ts";
import { greatestOf, leastOf } from "../../../numeric/least-and-greatest.ts";
import { rankCorrelation } from "../../../numeric/rank-correlation.ts";
import { studentTQuantile } from "../../../numeric/student-t-quantile.ts";
import { type MadeFunction, madeFunction } from "./square-root.ts";
import { thresholds } from "./thresholds.ts";

/** What one stage of the loop shows: its line, its shape, where it stands still. */
export type StageEvidence = StageEnds & {
  line?: StageLine | undefined;
  /** Correlation of output and input; 0 for an output that never changes. */
  correlation: number;
  /** Readings that this stage has, those flagged as no measurement left out. */
  readings: readonly StagedReading[];
  plateaus: readonly Plateau[];
  drift?: DriftInTime | undefined;
  gap?: DirectionGap | undefined;
  bow?: Bow | undefined;
  spread?: SpreadGrowth | undefined;
  /** A function that it makes of its input, where a straight line is meant. */
  made?: MadeFunction | undefined;
  /** Standard uncertainty that the line has besides its scatter, percent of span. */
  sharedUncertainty: number;
  /** One step of what was displayed, percent of span. */
  resolution: number;
};

/** What a stage is judged with besides its readings. */
export type StageContext = { loop: Loop; leastScatter: number; sharedUncertainty: number; mattering: number };

/**
 * Line and shape of one stage.
 *
 * Drift in time is taken off before the shape is looked at, and what bow or drift there is widens the uncertainty of the
 * line: a bow leaves a line with an error at both ends that is no shift.
 *
 * @param ends of the stage
 * @param all its readings, in the order in which they were taken
 * @param flagged readings that are no measurement of this stage, with the plateaus that some of them make
 * @param context loop, what rounding hides, uncertainty that all readings share, smallest error that matters
 * @returns evidence; no line and no shape where the output does not follow its input
 * Source: own choice of the order; each figure in its own file.
 * @example stageEvidence(stage, evidence.readings, { indexes: new Set(), plateaus: [] },
 *   { loop: evidence.loop, leastScatter: 0.01, sharedUncertainty: 0, mattering: 0.25 }).line?.gain // 1.000
 */
export function stageEvidence(
  ends: StageEnds,
  all: readonly StagedReading[],
  flagged: { indexes: ReadonlySet<number>; plateaus: readonly Plateau[] },
  context: StageContext,
): StageEvidence {
  const readings = all.filter(
    ({ index, percent }) =>
      !flagged.indexes.has(index) && percent[ends.input] !== undefined && percent[ends.output] !== undefined,
  );
  const correlation = stageCorrelation(ends, readings);
  const resolution = Math.sqrt(12) * context.leastScatter;
  const made = madeFunction(all, { ...ends, resolution }, context.mattering);
  const bare = { ...ends, correlation, readings, plateaus: flagged.plateaus, sharedUncertainty: 0, resolution, made };
  if (Math.abs(correlation) < thresholds.followsFrom) return bare;
  const line = stageLine(ends, readings, context.loop, context.leastScatter);
  if (line === undefined) return bare;
  const used = readings.filter(({ index }) => !line.excluded.includes(index)).map((reading) => errorOf(reading, ends));
  const drift = driftInTime(used);
  const drifts =
    drift !== undefined && isSignificant(drift.total, drift.totalStandardUncertainty, drift.degreesOfFreedom);
  const still = drifts ? withoutDrift(used, drift) : used;
  const bow = bowOf(still);
  const spread = spreadGrowth(used);
  const structure = Math.hypot(
    drifts ? drift.total / 2 : 0,
    bow !== undefined && isBowed(bow) ? bow.greatest : 0,
    spread === undefined ? 0 : spread.far / Math.sqrt(used.length / 3),
  );
  return {
    ...bare,
    line,
    drift,
    gap: directionGap(still),
    bow,
    spread,
    sharedUncertainty: Math.hypot(context.sharedUncertainty, context.leastScatter, structure),
  };
}

/**
 * The error of a stage's line at an input, with everything that makes it uncertain.
 *
 * @param stage with a line
 * @param percent of span of the input
 * @returns error and combined standard uncertainty, percent of span
 * @throws TypeError for a stage without a line
 * Source: JCGM 100:2008, 5.1.2.
 * @example lineErrorAt(stage, 0) // { percentSpan: 1.995, standardUncertainty: 0.007630 }
 */
export function lineErrorAt(stage: StageEvidence, percent: number): StageError {
  if (stage.line === undefined) throw new TypeError(`lineErrorAt: no line of the ${stage.stage}`);
  const { percentSpan, standardUncertainty } = stageErrorAt(stage.line.fit, percent);
  return { percentSpan, standardUncertainty: Math.hypot(standardUncertainty, stage.sharedUncertainty) };
}

/**
 * Whether a stage's line has an error worth a cause: above the limit that matters, and beyond what noise does.
 *
 * @param stage with or without a line
 * @param matteringAtEnds smallest errors that matter at the lower and at the upper end of the range, percent of span
 * @returns true where one end of the range has such an error
 * Source: own choice, see `thresholds`.
 * @example isOff(stage, [0.25, 0.25]) // true
 */
export function isOff(stage: StageEvidence, matteringAtEnds: readonly [number, number]): boolean {
  const { line } = stage;
  if (line === undefined) return false;
  return matteringAtEnds.some((mattering, place) => {
    const { percentSpan, standardUncertainty } = lineErrorAt(stage, 100 * place);
    const freedom = Math.max(1, line.fit.degreesOfFreedom);
    return Math.abs(percentSpan) > mattering && isSignificant(percentSpan, standardUncertainty, freedom);
  });
}

/**
 * Whether a figure is beyond what noise alone reaches once in so many tests.
 *
 * @param figure any unit
 * @param standardUncertainty >= 0, same unit
 * @param degreesOfFreedom of that uncertainty, at least 1
 * @param chance of noise, two-sided; 1 in 10 000 unless another is given
 * @returns true where it is
 * Source: Student's t, JCGM 100:2008 G.3; the chance is own choice, see `thresholds`.
 * @example isSignificant(1, 0.2, 60) // true
 */
export function isSignificant(
  figure: number,
  standardUncertainty: number,
  degreesOfFreedom: number,
  chance: number = thresholds.chanceOfNoise,
): boolean {
  const factor = studentTQuantile(1 - chance / 2, Math.max(1, degreesOfFreedom));
  return Math.abs(figure) > factor * standardUncertainty;
}

/**
 * Whether the mean errors leave their line by more than repeated readings scatter.
 *
 * @param bow of `bowOf`
 * @returns true for a residual beyond noise and beyond three standard deviations of a reading
 * Source: own choice, see `thresholds`.
 * @example isBowed({ greatest: 1, point: 50, standardUncertainty: 0.02, degreesOfFreedom: 40, repeatability: 0.05,
 *   residuals: [] }) // true
 */
export function isBowed({ greatest, standardUncertainty, degreesOfFreedom, repeatability }: Bow): boolean {
  const isOverRepeatability = Math.abs(greatest) > thresholds.bowOverRepeatability * repeatability;
  return isOverRepeatability && isSignificant(greatest, standardUncertainty, degreesOfFreedom);
}

/**
 * Whether repeated readings scatter so much more at the far end that it matters.
 *
 * @param stage of the loop
 * @param mattering smallest error that matters, percent of span
 * @returns true for three times the near scatter and half of what matters
 * Source: own choice, see `thresholds`.
 * @example hasGrowingSpread(stage, 0.25) // false
 */
export function hasGrowingSpread({ spread }: StageEvidence, mattering: number): boolean {
  return spread !== undefined && spread.far > thresholds.spreadRatio * spread.near && spread.far > mattering / 2;
}

/**
 * Whether the error of a stage moved with time by more than noise and by more than matters.
 *
 * @param stage of the loop
 * @param mattering smallest error that matters, percent of span
 * @returns true where it did
 * Source: own choice, see `thresholds`.
 * @example drifts(stage, 0.25) // false
 */
export function drifts({ drift, resolution }: StageEvidence, mattering: number): boolean {
  if (drift === undefined) return false;
  const { total, totalStandardUncertainty, degreesOfFreedom } = drift;
  return (
    Math.abs(total) > Math.max(mattering, resolution) &&
    isSignificant(total, totalStandardUncertainty, degreesOfFreedom)
  );
}

/**
 * How far the output of a stage follows its input.
 *
 * @param ends of the stage
 * @param readings those without input or output are passed over
 * @returns correlation of the ranks; 0 for a sensor whose signal stands still, whatever the noise on it does
 * Source: `rankCorrelation`.
 * @example stageCorrelation(stage, evidence.readings) // 0.9992
 */
export function stageCorrelation({ input, output }: StageEnds, readings: readonly StagedReading[]): number {
  const complete = readings.filter(({ percent }) => percent[input] !== undefined && percent[output] !== undefined);
  if (complete.length < 2) return 0;
  const inputs = complete.map(({ percent }) => percent[input] as number);
  const outputs = complete.map(({ percent }) => percent[output] as number);
  const moves = greatestOf(outputs) - leastOf(outputs);
  const isDead = input === "reference" && moves < thresholds.stillRange && isWide(inputs);
  return isDead ? 0 : rankCorrelation(inputs, outputs);
}

function isWide(inputs: readonly number[]): boolean {
  return greatestOf(inputs) - leastOf(inputs) >= 4 * thresholds.stillRange;
}

/**
 * The error of a stage at a reading: what it made, less what it was given.
 *
 * @param staged reading that has both
 * @param ends of the stage
 * @returns the reading by its place, with input and error in percent of span
 * Source: `StageEnds`.
 * @example errorOf(evidence.readings[0], stage).cycle // 1
 */
export function errorOf(staged: StagedReading, { input, output }: StageEnds): StageReading {
  const { index, point, direction, cycle, elapsed, percent } = staged;
  const given = percent[input] as number;
  return { index, point, direction, cycle, elapsed, input: given, error: (percent[output] as number) - given };
}
