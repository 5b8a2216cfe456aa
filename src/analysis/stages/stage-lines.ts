import { type Axis, axes, type StageName, stageBetween, stageWords } from "../../model/loop-stages.ts";
import type { LineFit } from "../../numeric/fit-line.ts";
import { greatestOf, leastOf } from "../../numeric/least-and-greatest.ts";
import { lineStandardUncertainty, lineValue } from "../../numeric/line-value.ts";
import { robustLine } from "../../numeric/robust-line.ts";
import type { Loop } from "../readings/loop.ts";
import { inUnitOf, type StagedReading } from "./staged-readings.ts";

/** One stage: from which quantity to which. */
export type StageEnds = { stage: StageName; input: Axis; output: Axis };

/** An error of a stage with the standard uncertainty of the line there. */
export type StageError = { percentSpan: number; standardUncertainty: number };

/** The straight line of the error of one stage on its input, both in percent of span. */
export type StageLine = StageEnds & {
  fit: LineFit;
  /** Output over input: 1 for a stage that changes nothing. */
  gain: number;
  gainStandardUncertainty: number;
  errorAtLower: StageError;
  errorAtUpper: StageError;
  /** Of the readings that the line rests on. */
  greatestResidual: { percentSpan: number; index: number };
  scatter: number;
  used: readonly number[];
  /** Readings too far from the line to belong to it, by `StagedReading.index`. */
  excluded: readonly number[];
  /** Where the line has no error: in the unit of the input; absent where the slope is not above twice its uncertainty. */
  zeroCrossing?: { percentSpan: number; value: number; standardUncertainty: number };
};

const fewestReadings = 3;
const leastInputRange = 20;

/**
 * The stages of a loop that the readings can tell apart: from each quantity that was read to the next one.
 *
 * @param readings of one phase
 * @returns stages from the sensor on; a quantity that fewer than three readings have is not there
 * Source: identity, as `stageShares`: the errors of the stages add up to the error of the loop.
 * @example stagesRead(stagedReadings(sheetOf(1, () => ({ signal: 12, value: 5 })), loop).readings).map(({ stage }) =>
 *   stage) // ["sensor", "input card and scaling"]
 */
export function stagesRead(readings: readonly StagedReading[]): readonly StageEnds[] {
  const read = axes.filter(
    (axis) => readings.filter(({ percent }) => percent[axis] !== undefined).length >= fewestReadings,
  );
  return read.slice(1).map((output, place) => {
    const input = read[place] as Axis;
    return { stage: stageWords[stageBetween(input, output)], input, output };
  });
}

/**
 * The robust line of the error of a stage on what the stage was given: the sensor's on the reference, the input card's
 * on the signal, and so on.
 *
 * @param ends of the stage
 * @param readings of one phase without those that are no measurement, see `robustLine` for the rest
 * @param loop for the unit of the input
 * @param leastScatter >= 0, percent of span: what rounding hides
 * @returns the line; undefined for fewer than three readings or an input that covers less than 20 % of span
 * Source: GUM (JCGM 100:2008) H.3 for the fit; zero crossing x = −a/b with u(x) = u(line at x)/|b|, as `lineInverse`.
 * @example stageLine({ stage: "sensor", input: "reference", output: "signal" }, stagedReadings(sheetOf(1, (reference)
 *   => ({ signal: 4 + 0.168 * reference })), loop).readings, loop, 0)?.gain // 1.05
 */
export function stageLine(
  ends: StageEnds,
  readings: readonly StagedReading[],
  loop: Loop,
  leastScatter: number,
): StageLine | undefined {
  const pairs = readings.flatMap((reading) => {
    const input = reading.percent[ends.input];
    const output = reading.percent[ends.output];
    return input === undefined || output === undefined
      ? []
      : [{ index: reading.index, point: reading.point, input, error: output - input }];
  });
  const inputs = pairs.map(({ input }) => input);
  if (pairs.length < fewestReadings || greatestOf(inputs) - leastOf(inputs) < leastInputRange) return undefined;
  const errors = pairs.map(({ error }) => error);
  const { fit, excluded } = robustLine(inputs, errors, groupsOf(pairs), leastScatter);
  const used = pairs.filter((_, place) => !excluded.includes(place));
  const residuals = used.map(({ input, error, index }) => ({ percentSpan: error - lineValue(fit, input), index }));
  const crossing = zeroCrossingOf(fit, ends.input, loop);
  return {
    ...ends,
    fit,
    gain: 1 + fit.slope,
    gainStandardUncertainty: fit.slopeStdError ?? 0,
    errorAtLower: stageErrorAt(fit, 0),
    errorAtUpper: stageErrorAt(fit, 100),
    greatestResidual: residuals.reduce((left, right) =>
      Math.abs(right.percentSpan) > Math.abs(left.percentSpan) ? right : left,
    ),
    scatter: Math.max(fit.residualStdDev ?? 0, leastScatter),
    used: used.map(({ index }) => index),
    excluded: excluded.map((place) => pairs[place]!.index),
    ...(crossing && { zeroCrossing: crossing }),
  };
}

/**
 * The error that a stage's line has at an input.
 *
 * @param fit error on input, both in percent of span
 * @param input percent of span, inside the range or not
 * @returns error and standard uncertainty of the line there, percent of span
 * Source: GUM (JCGM 100:2008) H.3.4.
 * @example stageErrorAt(fitLine([0, 50, 100], [1, 1, 1]), 0) // { percentSpan: 1, standardUncertainty: 0 }
 */
export function stageErrorAt(fit: LineFit, input: number): StageError {
  return { percentSpan: lineValue(fit, input), standardUncertainty: lineStandardUncertainty(fit, input) ?? 0 };
}

/**
 * How far an error lies off a stage's line.
 *
 * @param error of a reading, percent of span
 * @param fit error on input, both in percent of span
 * @param input of that reading, percent of span
 * @returns percent of span, above zero for an error above the line
 * Source: the residual of the least-squares line.
 * @example errorOffLine(3, fitLine([0, 50, 100], [1, 1, 1]), 20) // 2
 */
export function errorOffLine(error: number, fit: LineFit, input: number): number {
  return error - lineValue(fit, input);
}

function zeroCrossingOf(fit: LineFit, input: Axis, loop: Loop): StageLine["zeroCrossing"] | undefined {
  if (fit.slope === 0 || Math.abs(fit.slope) <= 2 * (fit.slopeStdError ?? 0)) return undefined;
  const percentSpan = fit.abscissaMean - fit.ordinateMean / fit.slope;
  const uncertainty = (lineStandardUncertainty(fit, percentSpan) ?? 0) / Math.abs(fit.slope);
  const unitPerPercent = Math.abs(inUnitOf(loop, input, 1) - inUnitOf(loop, input, 0));
  return {
    percentSpan,
    value: inUnitOf(loop, input, percentSpan),
    standardUncertainty: uncertainty * unitPerPercent,
  };
}

function groupsOf(pairs: readonly { point: number }[]): readonly (readonly number[])[] {
  const groups = new Map<number, number[]>();
  for (const [place, { point }] of pairs.entries()) {
    const group = groups.get(point);
    if (group === undefined) groups.set(point, [place]);
    else group.push(place);
  }
  return [...groups.values()];
}
