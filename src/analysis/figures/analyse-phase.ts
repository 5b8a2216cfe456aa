import type { Reading } from "../../model/calibration.ts";
import { spanOf } from "../../model/range.ts";
import { fitLine, type LineFit } from "../../numeric/fit-line.ts";
import {
  type AnalysedReading,
  analyseReadings,
  copyWords,
  judgedStage,
  type Steps,
} from "../readings/analyse-readings.ts";
import type { Loop, Stage } from "../readings/loop.ts";
import { type CurvePoint, type CurveReading, errorCurve } from "./error-curve.ts";
import { type Figure, isDetermined, notDetermined } from "./figure.ts";
import { type GreatestDifference, hysteresis, hysteresisWithinOneCycle } from "./hysteresis.ts";
import { inaccuracy } from "./inaccuracy.ts";
import { type Linearity, linearity } from "./linearity.ts";
import { type MaximumMeasuredError, maximumMeasuredError } from "./maximum-measured-error.ts";
import { type MeanAbsoluteError, meanAbsoluteError } from "./mean-absolute-error.ts";
import { type Repeatability, repeatability } from "./repeatability.ts";
import { type LineError, zeroAndSpanError } from "./zero-and-span-error.ts";

/** Figures that a record carries just as they are found, under these names. */
export type PlainFigures = {
  inaccuracy: Figure<{ positive: number; negative: number }>;
  meanAbsoluteError: Figure<MeanAbsoluteError>;
  maximumMeasuredError: Figure<MaximumMeasuredError>;
  repeatability: Figure<Repeatability>;
};

/** All figures of one phase; those in percent of span say so in the file that computes them. */
export type PhaseAnalysis = {
  judged: Stage;
  readings: readonly AnalysedReading[];
  curve: readonly CurvePoint[];
  cycles: number;
  fit: Figure<LineFit>;
  zeroAndSpan: Figure<{ zeroError: LineError; spanError: LineError }>;
  figures: PlainFigures;
  linearity: Figure<Linearity>;
  hysteresis: Figure<GreatestDifference>;
  hysteresisWithinOneCycle: Figure<GreatestDifference & { cycle: number }>;
  /** The reading with the greatest loop error. */
  greatestLoopError: Figure<AnalysedReading>;
};

/**
 * All figures of one phase (as found or as left).
 *
 * @param readings of that phase, in the order in which they were taken
 * @param loop what the loop is meant to do
 * @param steps smallest change that reference and signal could show; left out where they are exact
 * @returns the readings one by one and the figures over those that are not left out; or why nothing can be judged
 * Source: each figure's own file.
 * @example analysePhase([{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.5 }],
 *   { characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
 *   toleranceTerms: [], faultLevels: {}, signalUnit: "mA" }).figures.maximumMeasuredError
 *   // { percentSpan: 3.125, point: 50, direction: "rising" }
 */
export function analysePhase(readings: readonly Reading[], loop: Loop, steps?: Steps): Figure<PhaseAnalysis> {
  const judged = judgedStage(readings, loop);
  if (judged === undefined) {
    return notDetermined("the instrument does not say what the quantity that was read should be at its range ends");
  }
  const analysed = analyseReadings(readings, loop, judged, steps);
  const used = curveReadingsOf(analysed);
  const curve = used.length === 0 ? [] : errorCurve(used);
  const { rangeLower, rangeUpper } = loop.characteristics.signal;
  return {
    judged,
    readings: analysed,
    curve,
    cycles: new Set(used.map(({ cycle }) => cycle)).size,
    fit: outputLine(analysed, judged),
    zeroAndSpan: zeroAndSpanError(used, rangeLower, rangeUpper),
    figures: {
      inaccuracy: inaccuracy(used),
      meanAbsoluteError: meanAbsoluteError(used, spanOf({ rangeLower, rangeUpper })),
      maximumMeasuredError: maximumMeasuredError(curve),
      repeatability: repeatabilityOf(used, analysed),
    },
    linearity: linearity(curve),
    hysteresis: hysteresis(curve),
    hysteresisWithinOneCycle: hysteresisWithinOneCycle(used),
    greatestLoopError: greatestLoopError(analysed),
  };
}

/** Where what looks like a repeat is a copy of another cycle, nothing was repeated; of one cycle there is none. */
function repeatabilityOf(used: readonly CurveReading[], analysed: readonly AnalysedReading[]): Figure<Repeatability> {
  const found = repeatability(used);
  const hasCopies = analysed.some(({ leftOut }) => leftOut === copyWords);
  const isOneCycle = new Set(analysed.map(({ cycle }) => cycle)).size <= 1;
  return !isDetermined(found) && hasCopies && !isOneCycle ? notDetermined("the cycles are copies") : found;
}

/**
 * The readings that go into the figures of the judged quantity, as those take them.
 *
 * @param analysed readings of one phase
 * @returns those that are not left out, errors in percent of span
 * Source: own choice.
 * @example curveReadingsOf([]).length // 0
 */
export function curveReadingsOf(analysed: readonly AnalysedReading[]): readonly CurveReading[] {
  return analysed.flatMap(({ reading, error, point, cycle, leftOut }) =>
    leftOut === undefined && error !== undefined
      ? [{ point, reference: reading.reference, error: error.errorPercentSpan, direction: reading.direction, cycle }]
      : [],
  );
}

function outputLine(analysed: readonly AnalysedReading[], judged: Stage): Figure<LineFit> {
  const used = analysed.filter(({ leftOut, reading }) => leftOut === undefined && reading[judged] !== undefined);
  const references = used.map(({ reading }) => reading.reference);
  if (new Set(references).size < 2) return notDetermined("fewer than two reference distances");
  return fitLine(
    references,
    used.map(({ reading }) => reading[judged] as number),
  );
}

function greatestLoopError(analysed: readonly AnalysedReading[]): Figure<AnalysedReading> {
  let worst: AnalysedReading | undefined;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const reading of analysed) {
    if (reading.leftOut !== undefined || reading.loopError === undefined) continue;
    const size = Math.abs(reading.loopError.distance);
    if (size > greatest) [worst, greatest] = [reading, size];
  }
  return worst ?? notDetermined("no controller value was read");
}
