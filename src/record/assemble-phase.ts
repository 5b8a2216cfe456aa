import { analysePhase, type PhaseAnalysis } from "../analysis/analyse-phase.ts";
import type { AnalysedReading } from "../analysis/analyse-readings.ts";
import { type Figure, isDetermined } from "../analysis/figure.ts";
import { spanOf } from "../analysis/ideal-characteristic.ts";
import type { Loop } from "../analysis/loop.ts";
import type { Reading } from "../model/calibration.ts";
import type { TableRow } from "../model/calibration-case.ts";
import { type DecimalMark, readNumber } from "../units/read-number.ts";
import { decidePhase, type PhaseVerdict, type Verdict } from "../verdict/decide-phase.ts";
import type { PhaseRecord, ReadingRecord } from "./record-schema.ts";

/**
 * One phase as the record carries it: readings, figures, verdicts; a figure that cannot be had is null, with its
 * reason in `notDetermined`.
 *
 * @param rows readings of the phase, in the order of the table
 * @param loop what the loop is meant to do
 * @param markOf decimal mark of a file, to count the digits that were typed
 * @returns the phase, numbers at full precision; or the reason why nothing in it can be judged
 * Source: each figure's own file in `analysis`.
 * @example assemblePhase([{ file: "readings.csv", line: 2, cells: { reference: "50", signal: "12.16" }, row: {
 *   calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 } }], { characteristics: {
 *   signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } }, toleranceTerms: [{
 *   basis: "distance", plus: 1, minus: 1 }], faultLevels: {}, signalUnit: "mA" }, () => "point").verdict // "pass"
 */
export function assemblePhase(
  rows: readonly TableRow<Reading>[],
  loop: Loop,
  markOf: (file: string) => DecimalMark,
): Figure<PhaseRecord> {
  const analysis = analysePhase(
    rows.map(({ row }) => row),
    loop,
  );
  if (!isDetermined(analysis)) return analysis;
  const decided = decidePhase(analysis.readings, spanOf(loop.characteristics.signal));
  const reasons: Record<string, string> = {};
  return {
    readings: analysis.readings.map((reading, index) =>
      readingRecord(reading, rows[index]?.line ?? 0, decided.readingVerdicts[index]),
    ),
    judged: analysis.judged,
    counted: countedOf(analysis),
    decimals: typedDecimals(rows, markOf),
    ...figuresOf(analysis, reasons),
    points: analysis.curve.map((point) => ({ ...point })),
    ...statementOf(analysis, decided, rows, reasons),
    notDetermined: reasons,
  };
}

type Reasons = Record<string, string>;

/** A figure for JSON: null and a reason where it is not determined. */
function orNull<Value>(name: string, figure: Figure<Value>, reasons: Reasons): Value | null {
  if (isDetermined(figure)) return figure;
  reasons[name] = figure.notDetermined;
  return null;
}

function figuresOf(analysis: PhaseAnalysis, reasons: Reasons) {
  const fit = orNull("fit", analysis.fit, reasons);
  const zeroError = orNull("zeroError", pick(analysis.zeroAndSpan, "zeroError"), reasons);
  const spanError = orNull("spanError", pick(analysis.zeroAndSpan, "spanError"), reasons);
  const withinOneCycle = orNull("hysteresis.withinOneCycle", analysis.hysteresisWithinOneCycle, reasons);
  const hysteresis = orNull("hysteresis", analysis.hysteresis, reasons);
  return {
    fit: fit && {
      n: fit.n,
      slope: fit.slope,
      intercept: fit.intercept,
      slopeStdError: fit.slopeStdError,
      interceptStdError: fit.interceptStdError,
      residualStdDev: fit.residualStdDev,
      rSquared: fit.rSquared,
    },
    zeroError,
    spanError,
    inaccuracy: orNull("inaccuracy", analysis.inaccuracy, reasons),
    maximumMeasuredError: orNull("maximumMeasuredError", analysis.maximumMeasuredError, reasons),
    linearity: orNull("linearity", analysis.linearity, reasons) ?? {
      independent: null,
      terminal: null,
      zeroBased: null,
      leastSquares: null,
    },
    hysteresis: hysteresis && { ...hysteresis, withinOneCycle },
    repeatability: orNull("repeatability", analysis.repeatability, reasons),
  };
}

function pick<Values, Key extends keyof Values>(figure: Figure<Values>, key: Key): Figure<Values[Key]> {
  return isDetermined(figure) ? figure[key] : figure;
}

function countedOf({ readings, curve, cycles }: PhaseAnalysis): PhaseRecord["counted"] {
  const leftOut = readings.filter((reading) => reading.leftOut !== undefined).length;
  return { readings: readings.length, used: readings.length - leftOut, leftOut, points: curve.length, cycles };
}

function statementOf(
  analysis: PhaseAnalysis,
  decided: PhaseVerdict,
  rows: readonly TableRow<Reading>[],
  reasons: Reasons,
): Pick<PhaseRecord, "loopError" | "worst" | "verdicts" | "verdict"> {
  const greatest = orNull("loopError", analysis.greatestLoopError, reasons);
  const worst = orNull("worst", decided.worst, reasons);
  const lineOf = (reading: AnalysedReading) => rows[analysis.readings.indexOf(reading)]?.line ?? 0;
  return {
    loopError: greatest?.loopError ? { ...greatest.loopError, row: lineOf(greatest), shares: greatest.shares } : null,
    worst: worst && {
      of: worst.of,
      row: lineOf(worst.reading),
      errorDistance: worst.errorDistance,
      errorPercentSpan: worst.errorPercentSpan,
      partOfTolerance: worst.partOfTolerance,
    },
    verdicts: {
      sensor: orNull("verdicts.sensor", decided.sensor, reasons),
      controller: orNull("verdicts.controller", decided.controller, reasons),
    },
    verdict: orNull("verdict", decided.overall, reasons),
  };
}

function readingRecord(analysed: AnalysedReading, row: number, verdict: Verdict | undefined): ReadingRecord {
  const { reading, point, cycle, error, loopError, shares, tolerance, leftOut } = analysed;
  const { reference, direction, signal, counts, value, time, remark } = reading;
  return withoutUndefined({
    row,
    cycle,
    direction,
    point,
    reference,
    signal,
    counts,
    value,
    time,
    remark,
    indicated: error?.indicated,
    errorDistance: error?.errorDistance,
    errorSignal: error?.errorOutput,
    errorPercentSpan: error?.errorPercentSpan,
    loopErrorValue: loopError?.value,
    loopErrorDistance: loopError?.distance,
    shares: Object.keys(shares).length === 0 ? undefined : shares,
    toleranceLow: tolerance.low,
    toleranceHigh: tolerance.high,
    verdict,
    leftOut,
  }) as ReadingRecord;
}

function withoutUndefined(fields: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined));
}

function typedDecimals(
  rows: readonly TableRow<Reading>[],
  markOf: (file: string) => DecimalMark,
): PhaseRecord["decimals"] {
  const most = (column: "reference" | "signal" | "counts" | "value") =>
    rows.reduce((decimals, { cells, file }) => {
      const written = readNumber(cells[column] ?? "", markOf(file));
      return Math.max(decimals, written?.decimals ?? 0);
    }, 0);
  return { reference: most("reference"), signal: most("signal"), counts: most("counts"), value: most("value") };
}
