import { type Loop, loopOf } from "../../analysis/readings/loop.ts";
import { toleranceAt } from "../../analysis/readings/tolerance.ts";
import { inUnitOf, type StagedReading, stagedReadings } from "../../analysis/stages/staged-readings.ts";
import type { Calibration, Reading, Standard, Trip } from "../../model/calibration.ts";
import type { TableRow } from "../../model/calibration-case.ts";
import type { Phase } from "../../model/calibration-words.ts";
import { columnName } from "../../model/column-name.ts";
import type { Instrument, Output } from "../../model/instrument.ts";
import type { Axis } from "../../model/loop-stages.ts";
import { spanOf } from "../../model/range.ts";
import { leastOf } from "../../numeric/least-and-greatest.ts";
import type { ProblemCode } from "../../problems/catalogue.ts";
import { placeOfRow } from "../../problems/place-of-row.ts";
import type { Problem } from "../../problems/problem.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { type DecimalMark, readNumber } from "../../units/read-number.ts";
import { writePlain } from "../../units/write-number.ts";
import { type ReadingResolutions, readingResolutions } from "../phase/typed-resolution.ts";

/** The rows of one calibration as far as they could be read, and how the numbers of their files are written. */
export type MeasuredRows = {
  calibration: TableRow<Calibration>;
  instrument: TableRow<Instrument>;
  standards: readonly TableRow<Standard>[];
  outputs: readonly TableRow<Output>[];
  readings: readonly TableRow<Reading>[];
  trips: readonly TableRow<Trip>[];
  markOf: (table: "readings" | "trips") => (file: string) => DecimalMark;
};

/** One phase of a calibration, as the checks of its numbers take it. */
export type MeasuredPhase = {
  phase: Phase;
  rows: readonly TableRow<Reading>[];
  staged: readonly StagedReading[];
  loop: Loop;
  instrument: Instrument;
  resolutions: ReadingResolutions;
  /** Half of the tolerance where it is least, percent of span. */
  mattering: number;
  steps: Readonly<Partial<Record<Axis, number>>>;
  tell: Tell;
};

/** Notes a problem of a reading. */
export type Tell = (
  row: Pick<TableRow<unknown>, "file" | "line" | "sheet" | "cells">,
  code: ProblemCode,
  particulars: { column?: string; values: Problem["values"] },
) => void;

/**
 * Notes problems of one calibration.
 *
 * @param calibration name of the calibration
 * @param problems list that they go to
 * @returns a function that takes the row, the code and what its sentence needs
 * Source: own choice.
 * @example toldBy((_, problems) => tellOf("C-1", problems)({ file: "readings.csv", line: 4, cells: {} },
 *   "plausible/row-copied", { values: { line: 3 } })) // ["plausible/row-copied 4"]
 */
export function tellOf(calibration: string, problems: ProblemList): Tell {
  return (row, code, { column, values }) => {
    const read = column && row.cells[column];
    problems.add(code, placeOfRow(row, column), { read, values, belongsTo: { calibration } });
  };
}

/**
 * A phase of a calibration with its numbers on one scale.
 *
 * @param rows of the calibration
 * @param phase as found or as left
 * @param tell where its problems go
 * @returns the phase; undefined where it has no readings that count
 * Source: own choice: half of the tolerance is what matters of an error.
 * @example measuredPhase(spoiledRows, "as_left", () => {}).staged.length // 20
 */
export function measuredPhase(measured: MeasuredRows, phase: Phase, tell: Tell): MeasuredPhase | undefined {
  const rows = measured.readings.filter(({ row }) => row.phase === phase);
  const instrument = measured.instrument.row;
  const loop = loopOf(instrument);
  const { readings } = stagedReadings(
    rows.map(({ row }) => row),
    loop,
  );
  if (readings.length === 0) return undefined;
  const resolutions = readingResolutions(rows, instrument, measured.markOf("readings"));
  return {
    ...{ phase, rows, staged: readings, loop, instrument, resolutions, tell },
    mattering: halfTolerance(loop),
    steps: stepsInPercent(loop, resolutions),
  };
}

/** Nothing is allowed at a distance of 0 by percent of reading, so that the ends of the range count with the middle. */
function halfTolerance({ toleranceTerms, characteristics: { signal } }: Loop): number {
  const { rangeLower, rangeUpper } = signal;
  const allowed = [rangeLower, (rangeLower + rangeUpper) / 2, rangeUpper].flatMap((reference) => {
    const { low, high } = toleranceAt(toleranceTerms, signal, reference);
    return [-low, high].filter((side) => side > 0);
  });
  return allowed.length === 0 ? 0 : (100 * leastOf(allowed)) / spanOf(signal) / 2;
}

function stepsInPercent(loop: Loop, resolutions: ReadingResolutions): MeasuredPhase["steps"] {
  const { signal, counts, value } = loop.characteristics;
  const percent = (axis: Axis, step: number) => step / Math.abs(inUnitOf(loop, axis, 1) - inUnitOf(loop, axis, 0));
  const ofSignal = percent("signal", resolutions.signal.step);
  return {
    reference: (100 * resolutions.reference.step) / spanOf(signal),
    ...{ signal: ofSignal, signalAtCard: ofSignal },
    ...(counts && { counts: percent("counts", 1) }),
    ...(value && { value: percent("value", resolutions.value.step) }),
  };
}

/**
 * The unit of a column of readings, as a sentence names it.
 *
 * @param instrument that names the units
 * @param axis the column
 * @returns unit; "counts" for the counts of a card, empty where the controller's value has none
 * Source: own choice.
 * @example ownUnit(spoiledPhase.instrument, "signalAtCard") // "mA"
 */
export function ownUnit({ distanceUnit, signalUnit, valueUnit = "" }: Instrument, axis: Axis): string {
  if (axis === "reference") return distanceUnit;
  if (axis === "value") return valueUnit;
  return axis === "counts" ? "counts" : signalUnit;
}

/**
 * A number with the digits of its column.
 *
 * @param value to be written
 * @param decimals of the column
 * @returns text without zeros at the end
 * Source: own choice.
 * @example shown(4.90000001, 3) // "4.9"
 */
export function shown(value: number, decimals: number): string {
  return writePlain(Number(value.toFixed(Math.min(decimals, 12))));
}

/**
 * How a number was written in a cell, where it stands there without a unit.
 *
 * @param row with the text of its cells
 * @param axis the column
 * @param markOf decimal mark of a file
 * @returns number and decimals; undefined where the cell is empty or names a unit
 * Source: own choice: a number with its unit behind it says what it is.
 * @example writtenIn({ file: "readings.csv", cells: { signal: "4.91" } }, "signal", () => "point").decimals // 2
 */
export function writtenIn(
  { cells, file }: { cells: Readonly<Record<string, string>>; file: string },
  axis: Axis,
  markOf: (file: string) => DecimalMark,
): { value: number; decimals: number } | undefined {
  const written = readNumber(cells[columnName(axis)] ?? "", markOf(file));
  return written === undefined || written.unit !== null ? undefined : written;
}
