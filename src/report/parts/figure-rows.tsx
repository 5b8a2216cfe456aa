import type { ComponentChildren } from "preact";
import { type FigureKey, figureDefinitions } from "../../record/figure-definitions.ts";
import { spanOf } from "../../record/range.ts";
import type { CalibrationRecord, PhaseRecord } from "../../record/record-schema.ts";
import { counted } from "../../units/counted.ts";
import { writeWithUncertainty } from "../../units/round-to-uncertainty.ts";
import { writeFixed, writeSigned, writeSignificant } from "../../units/write-number.ts";
import type { NumberStyle } from "../style/number-style.ts";
import { type FigureRow, Where, withReason } from "./figure-row.tsx";

type Cell = (phase: PhaseRecord) => ComponentChildren;

/** Every figure that a record can have, in the order of its definitions, with what it reads for a phase. */
export function figureRows(record: CalibrationRecord, style: NumberStyle): readonly FigureRow[] {
  const cells = figureCells(record, style);
  return figureDefinitions.flatMap((definition) => {
    const cell = cells[definition.key];
    return cell === undefined ? [] : [{ ...definition, cell }];
  });
}

function figureCells(record: CalibrationRecord, style: NumberStyle): Partial<Record<FigureKey, Cell>> {
  return { ...lineCells(record), ...errorCells(record, style), ...curveCells(record, style) };
}

/** The fitted line in the unit of the output; zero and span error read off it. */
function lineCells({ instrument }: CalibrationRecord): Partial<Record<FigureKey, Cell>> {
  const outputUnit = ({ judged }: PhaseRecord) =>
    judged === "signal" ? instrument.signalUnit : judged === "counts" ? "counts" : (instrument.valueUnit ?? "units");
  const sizeOf = ({ slope, intercept }: Fit) => Math.abs(slope) * spanOf(instrument) + Math.abs(intercept);
  const residual = (fit: Fit, unit: string) =>
    fit.residualStdDev === null
      ? "not determined: two readings only"
      : `${writeSignificant(aboveRounding(fit.residualStdDev, sizeOf(fit)), 3)} ${unit}`;
  return {
    slope: (phase) =>
      withReason(
        phase,
        "fit",
        phase.fit,
        (fit) =>
          `${pair(fit.slope, aboveRounding(fit.slopeStdError, sizeOf(fit) / spanOf(instrument)))} ${outputUnit(phase)}/${instrument.distanceUnit}`,
      ),
    intercept: (phase) =>
      withReason(
        phase,
        "fit",
        phase.fit,
        (fit) => `${pair(fit.intercept, aboveRounding(fit.interceptStdError, sizeOf(fit)))} ${outputUnit(phase)}`,
      ),
    residualStdDev: (phase) => withReason(phase, "fit", phase.fit, (fit) => residual(fit, outputUnit(phase))),
    zeroError: (phase) => withReason(phase, "zeroError", phase.zeroError, signedPair),
    spanError: (phase) => withReason(phase, "spanError", phase.spanError, signedPair),
  };
}

/** Errors with their sign, and where they are. */
function errorCells({ instrument }: CalibrationRecord, style: NumberStyle): Partial<Record<FigureKey, Cell>> {
  const percent = (value: number) => (value === 0 ? writeFixed(0, style.percent) : writeSigned(value, style.percent));
  const at = (point: number) => placeOf(point, instrument.distanceUnit);
  /** 0 is no error: no reading lies on that side. */
  const percentOrNone = (value: number) => (value === 0 ? "none" : percent(value));
  return {
    inaccuracy: (phase) =>
      withReason(
        phase,
        "inaccuracy",
        phase.inaccuracy,
        (found) => `${percentOrNone(found.positive)} / ${percentOrNone(found.negative)}`,
      ),
    meanAbsoluteError: (phase) =>
      withReason(phase, "meanAbsoluteError", phase.meanAbsoluteError ?? null, (found) => (
        <Where at={`${writeFixed(found.distance, style.distance)} ${instrument.distanceUnit}`}>
          {writeFixed(found.percentSpan, style.percent)}
        </Where>
      )),
    maximumMeasuredError: (phase) =>
      withReason(phase, "maximumMeasuredError", phase.maximumMeasuredError, (found) => (
        <Where at={`${at(found.point)}, ${found.direction}`}>{percent(found.percentSpan)}</Where>
      )),
    loopError: (phase) =>
      withReason(phase, "loopError", phase.loopError, (found) => (
        <Where at={`${writeSigned(found.value, style.value)} ${instrument.valueUnit ?? ""}`}>
          {percent(found.percentSpan)}
        </Where>
      )),
  };
}

/** Sizes of the error curve: linearity, hysteresis, repeatability. */
function curveCells({ instrument }: CalibrationRecord, style: NumberStyle): Partial<Record<FigureKey, Cell>> {
  const size = (value: number) => writeFixed(value, style.percent);
  const at = (point: number) => placeOf(point, instrument.distanceUnit);
  /** Where all are equal, the greatest difference is at no place more than at another. */
  const sized = ({ percentSpan }: { percentSpan: number }, place: string) =>
    aboveRounding(percentSpan, wholeSpan) === 0 ? size(0) : <Where at={place}>{size(percentSpan)}</Where>;
  const linearity =
    (kind: keyof PhaseRecord["linearity"]): Cell =>
    (phase) =>
      withReason(phase, "linearity", phase.linearity[kind], size);
  return {
    "linearity.independent": linearity("independent"),
    "linearity.terminal": linearity("terminal"),
    "linearity.zeroBased": linearity("zeroBased"),
    "linearity.leastSquares": linearity("leastSquares"),
    hysteresis: (phase) => withReason(phase, "hysteresis", phase.hysteresis, (found) => sized(found, at(found.point))),
    "hysteresis.withinOneCycle": (phase) =>
      withReason(phase, "hysteresis.withinOneCycle", phase.hysteresis?.withinOneCycle ?? null, (found) =>
        sized(found, `${at(found.point)}, cycle ${found.cycle}`),
      ),
    repeatability: (phase) =>
      withReason(phase, "repeatability", phase.repeatability, (found) =>
        sized(found, `${at(found.point)}, ${found.direction}`),
      ),
    "repeatability.pooledStdDev": (phase) =>
      withReason(phase, "repeatability", phase.repeatability, (found) => (
        <Where at={`${counted(found.degreesOfFreedom, "degree")} of freedom`}>
          {writeSignificant(found.pooledStdDev, 2)}
        </Where>
      )),
  };
}

type Fit = NonNullable<PhaseRecord["fit"]>;

/** 0 for what a computer's own rounding makes of numbers of that size. */
function aboveRounding<Known extends number | null>(value: Known, size: number): Known | 0 {
  return value !== null && Math.abs(value) <= ownRounding * size ? 0 : value;
}
const ownRounding = 1e-13;
/** Percent of span, the size of the numbers that a difference of errors is made of. */
const wholeSpan = 100;

type LineError = NonNullable<PhaseRecord["zeroError"]>;

/** An error and its standard uncertainty: the sign is part of the meaning, so that + is written too. */
/** With all that makes it uncertain; where no standard says its own, what the fit alone leaves open. */
function signedPair({ percentSpan, standardUncertainty, combinedStandardUncertainty }: LineError): string {
  return `${percentSpan > 0 ? "+" : ""}${pair(percentSpan, combinedStandardUncertainty ?? standardUncertainty)}`;
}

function pair(value: number, standardUncertainty: number | null): string {
  if (standardUncertainty === null || standardUncertainty === 0) return writeSignificant(value, 6);
  const written = writeWithUncertainty(value, standardUncertainty);
  return `${written.value} ± ${written.uncertainty}`;
}

function placeOf(point: number, unit: string): string {
  const decimals = Math.min(String(Number(point.toPrecision(12))).split(".")[1]?.length ?? 0, 3);
  return `at ${writeFixed(point, decimals)} ${unit}`;
}
