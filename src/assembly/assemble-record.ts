import { isDetermined } from "../analysis/figures/figure.ts";
import { loopOf } from "../analysis/readings/loop.ts";
import type { CalibrationRows, InputFile, TableRow } from "../model/calibration-case.ts";
import type { Phase } from "../model/calibration-words.ts";
import type { Instrument } from "../model/instrument.ts";
import type { Problem } from "../problems/problem.ts";
import { placeText, whatIsWrong } from "../problems/sentence.ts";
import type { Amendment } from "../record/amendment-schema.ts";
import { digestOf, type FileDigest, toHex } from "../record/file-digest.ts";
import { recordFormat } from "../record/record-format.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";
import type { RecordSummary } from "../record/record-summary-schema.ts";
import { withDecimalMark } from "../units/decimal-mark.ts";
import { falseAcceptOf } from "../verdict/decision/false-accept-of.ts";
import { type RuleOverride, ruleOf, usualMinimumRatio } from "../verdict/decision/rule-of.ts";
import { assembleOverall, type MeasuredPhase } from "./assemble-overall.ts";
import { decimalMarkOf } from "./decimal-mark-of.ts";
import { withFurtherParts } from "./further-parts.ts";
import { assemblePhase } from "./phase/assemble-phase.ts";

/** The words whose definitions the figures follow, where the instrument names no other standard. */
export const defaultFigureBasis = "IEC 61298-2 terms, averages of rising and falling";

/** What a record says of the program beside its version. */
export type RanWith = Omit<CalibrationRecord["software"], "name" | "version">;

export type RecordContext = {
  softwareVersion: string;
  /** Digest and self-test of the program that runs, where they were asked for. */
  ranWith?: RanWith | undefined;
  digests: ReadonlyMap<string, FileDigest>;
  warnings: readonly Problem[];
  /** A decision rule for this run, over the instrument's. */
  ruleOverride?: RuleOverride | undefined;
  /** What the record replaces, and why; its revision is the next. */
  amendment?: Amendment | undefined;
  /** Filed records of the tag before this one, oldest first. */
  history?: readonly RecordSummary[] | undefined;
  /** As-found results of all loops filed before this one. */
  filedRate?: CalibrationRecord["filedRate"];
  /** How many draws check each budget; none where it is left out. */
  monteCarloDraws?: number | undefined;
};

/**
 * The record of one calibration: everything that was read, computed and decided, as one document.
 *
 * @param rows checked rows of the calibration, with the text that they came from
 * @param context version of the program, digest of each input file by its name, warnings that touch the calibration
 * @returns the document of `record-schema.ts`; numbers at full precision
 * @throws TypeError where a digest is missing
 * Source: the figures' own files; ISO/IEC 17025:2017, 7.5 and 7.8, for what a record has to carry.
 * @example assembleRecord({ calibration: { row: { calibration: "C-1", tag: "LT-1" }, file: "calibrations.csv", line: 2,
 *   cells: {} }, instrument: { row: { tag: "LT-1", rangeLower: 0, rangeUpper: 100, distanceUnit: "mm", signalLower: 4,
 *   signalUpper: 20, signalUnit: "mA", tolerance: 1, toleranceBasis: "distance" }, file: "instruments.csv", line: 2,
 *   cells: {} }, readings: [{ row: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50,
 *   signal: 12.16 }, file: "readings.csv", line: 2, cells: { reference: "50", signal: "12.16" } }], standards: [],
 *   outputs: [], trips: [], loopChecks: [], controllerLimits: [], candidates: [], files: [] },
 *   { softwareVersion: "0.1.0", digests: new Map(), warnings: [] }).phases.asFound.verdict // "pass"
 */
export function assembleRecord(rows: CalibrationRows, context: RecordContext): CalibrationRecord {
  return withDecimalMark(rows.instrument.row.decimalMark, () => assembled(rows, context));
}

function assembled(rows: CalibrationRows, context: RecordContext): CalibrationRecord {
  const instrument = rows.instrument.row;
  const asFound = phaseOf(rows, "as_found", context);
  const asLeft = phaseOf(rows, "as_left", context);
  const rule = ruleOf(instrument, context.ruleOverride ?? {});
  const falseAccept = falseAcceptOf(instrument, asLeft ?? asFound, rule, context.filedRate);
  const decisionRule = decisionRuleOf(instrument, context);
  const standards = rows.standards.map(({ row }) => row);
  const measured: CalibrationRecord = {
    schema: recordFormat,
    software: softwareOf(context),
    inputs: inputsOf(rows, context.digests),
    revision: (context.amendment?.replaces.revision ?? 0) + 1,
    ...(context.amendment && { amendment: context.amendment }),
    ...(context.history && { history: [...context.history] }),
    ...(context.filedRate && { filedRate: { inTolerance: context.filedRate.inTolerance, of: context.filedRate.of } }),
    figureBasis: instrument.figureBasis ?? defaultFigureBasis,
    decisionRule,
    instrument,
    calibration: rows.calibration.row,
    standards,
    outputs: rows.outputs.map(({ row }) => row),
    ...assembleOverall({
      ...{ instrument, calibration: rows.calibration.row, decisionRule, standards },
      phases: { asFound, asLeft },
    }),
    ...(falseAccept && { falseAccept }),
    ...drawingOf(rows, context),
    warnings: context.warnings.map((problem) => ({
      code: problem.code,
      place: placeText(problem.place),
      says: whatIsWrong(problem),
    })),
  };
  return withFurtherParts(measured, rows);
}

function phaseOf(rows: CalibrationRows, phase: Phase, context: RecordContext): MeasuredPhase | undefined {
  const readings = rows.readings.filter(({ row }) => row.phase === phase);
  if (readings.length === 0) return undefined;
  const instrument = rows.instrument.row;
  const { ruleOverride = {}, monteCarloDraws } = context;
  const assembled = assemblePhase(readings, {
    loop: loopOf(instrument),
    instrument,
    calibration: rows.calibration.row,
    standards: rows.standards.map(({ row }) => row),
    rule: ruleOf(instrument, ruleOverride),
    markOf: decimalMarkOf(rows, "readings"),
    drawnBy: monteCarloDraws === undefined ? undefined : { draws: monteCarloDraws, seed: seedOf(rows, context) },
  });
  return isDetermined(assembled) ? assembled : undefined;
}

function softwareOf({ softwareVersion, ranWith = {} }: RecordContext): CalibrationRecord["software"] {
  const { sha256, selfTest } = ranWith;
  return {
    name: "spanwright",
    version: softwareVersion,
    ...(sha256 !== undefined && { sha256 }),
    ...(selfTest && { selfTest: { passed: selfTest.passed, of: selfTest.of } }),
  };
}

/** How the draws can be repeated. */
function drawingOf(rows: CalibrationRows, context: RecordContext) {
  const { monteCarloDraws } = context;
  return monteCarloDraws === undefined ? {} : { monteCarloDraws, monteCarloSeed: toHex(seedOf(rows, context)) };
}

/** A digest of the files that were read: the same tables draw the same numbers. */
function seedOf({ files }: CalibrationRows, { digests }: RecordContext): Uint8Array {
  const text = files.map(({ name }) => digests.get(name)?.sha256 ?? "").join("\n");
  return digestOf(new TextEncoder().encode(text));
}

function decisionRuleOf(
  instrument: Instrument,
  { ruleOverride = {} }: RecordContext,
): CalibrationRecord["decisionRule"] {
  const { name, guardFactor } = ruleOverride;
  const isOverridden = name !== undefined || guardFactor !== undefined;
  const prescribedBy = isOverridden ? "an option of the command, for this run" : instrument.rulePrescribedBy;
  const agreedOn = isOverridden ? undefined : instrument.ruleAgreedOn;
  return {
    ...ruleOf(instrument, ruleOverride),
    minimumTestUncertaintyRatio: instrument.minimumTur ?? usualMinimumRatio,
    ...(prescribedBy !== undefined && { prescribedBy }),
    ...(agreedOn !== undefined && { agreedOn }),
    ...(isOverridden && {
      givenForThisRun: { ...(name !== undefined && { name }), ...(guardFactor !== undefined && { guardFactor }) },
    }),
  };
}

/**
 * The files that a record rests on, and every row of them with its cells as they were typed.
 *
 * @param rows of one calibration
 * @param digests of the files, by their names
 * @returns as they stand in the record
 * Faults: `TypeError` for a file without a digest.
 * Source: ISO/IEC 17025:2017, 7.5.1: the original observations are kept.
 * @example inputsOf({ ...spoiledRows, files: [] }, new Map()).rows.instruments.length // 1
 */
export function inputsOf(rows: CalibrationRows, digests: RecordContext["digests"]): CalibrationRecord["inputs"] {
  return {
    files: rows.files.map((file) => {
      const digest = digests.get(file.name);
      if (digest === undefined) throw new TypeError(`assembleRecord: no digest of ${file.name}`);
      const { sheets, ...described } = file;
      return { ...described, tables: [...file.tables], ...(sheets && { sheets: sheets.map(sheetLetters) }), ...digest };
    }),
    rows: {
      instruments: [sourceRow(rows.instrument)],
      calibrations: [sourceRow(rows.calibration)],
      standards: rows.standards.map(sourceRow),
      outputs: rows.outputs.map(sourceRow),
      readings: rows.readings.map(sourceRow),
      ...(rows.loopChecks.length > 0 && { loop_checks: rows.loopChecks.map(sourceRow) }),
      ...(rows.controllerLimits.length > 0 && { controller_limits: rows.controllerLimits.map(sourceRow) }),
      ...(rows.trips.length > 0 && { trips: rows.trips.map(sourceRow) }),
    },
  };
}

function sheetLetters({ table, name, letters }: NonNullable<InputFile["sheets"]>[number]) {
  return { table, name, letters: { ...letters } };
}

function sourceRow({ file, line, cells }: TableRow<unknown>) {
  return { file, line, cells: { ...cells } };
}
