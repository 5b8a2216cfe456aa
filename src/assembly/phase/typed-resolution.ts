import type { Instrument } from "../../model/instrument.ts";
import { convert, convertDifference } from "../../units/convert.ts";
import { type DecimalMark, readNumber, type WrittenNumber } from "../../units/read-number.ts";
import { type UnitSymbol, unitOf, unitTable } from "../../units/unit-table.ts";

/** How finely a column was typed, in the column's unit: the decimals that show all of it, and the smallest step. */
export type TypedResolution = { decimals: number; step: number };

/** A row of a table as text, with the file that it stands in. */
type TypedRow = { cells: Readonly<Record<string, string | undefined>>; file: string };

/** Decimals that a number of another unit may add to those of its step. */
const mostMore = 3;

/**
 * How finely the numbers of a column were typed: the smallest step is the resolution of what was read.
 *
 * A number typed in another unit counts with its step converted: "2.0 in" in a table of millimetres has a step of 2.54
 * mm, not of 0.1 mm. Its decimals are those that show it unchanged, here 50.8.
 *
 * @param rows of a table with the text of their cells
 * @param column name of the column, as in the table
 * @param unit of the column
 * @param markOf decimal mark of a file
 * @returns most decimals and smallest step over the rows; 0 and 1 where nothing was typed
 * Source: own choice; `convert` for the factors.
 * @example typedResolution([{ file: "readings.csv", cells: { reference: "2.0 in" } }], "reference", "mm", () => "point")
 *   // { decimals: 1, step: 2.54 }
 */
export function typedResolution(
  rows: readonly TypedRow[],
  column: string,
  unit: string | undefined,
  markOf: (file: string) => DecimalMark,
): TypedResolution {
  const typed = rows.flatMap(({ cells, file }) => {
    const written = readNumber(cells[column] ?? "", markOf(file));
    return written === undefined ? [] : [resolutionOf(written, unit)];
  });
  return {
    decimals: typed.reduce((most, { decimals }) => Math.max(most, decimals), 0),
    step: typed.length === 0 ? 1 : typed.reduce((least, { step }) => Math.min(least, step), Number.POSITIVE_INFINITY),
  };
}

/** The columns of a phase's readings that are numbers with a resolution. */
export type ReadingResolutions = Record<"reference" | "signal" | "counts" | "value", TypedResolution>;

/**
 * How finely each column of readings was typed.
 *
 * @param rows readings of one phase with the text of their cells
 * @param instrument for the units of the columns
 * @param markOf decimal mark of a file
 * @returns decimals and step by column
 * Source: as `typedResolution`.
 * @example readingResolutions([{ file: "readings.csv", cells: { reference: "50.0", signal: "12.160" } }],
 *   { distanceUnit: "mm", signalUnit: "mA" }, () => "point").signal // { decimals: 3, step: 0.001 }
 */
export function readingResolutions(
  rows: readonly TypedRow[],
  instrument: Pick<Instrument, "distanceUnit" | "signalUnit" | "valueUnit">,
  markOf: (file: string) => DecimalMark,
): ReadingResolutions {
  const of = (column: string, unit?: string) => typedResolution(rows, column, unit, markOf);
  return {
    reference: of("reference", instrument.distanceUnit),
    signal: of("signal", instrument.signalUnit),
    counts: of("counts"),
    value: of("value", instrument.valueUnit),
  };
}

/**
 * The step of each column alone, as a budget takes it.
 *
 * @param resolutions of `readingResolutions`
 * @returns step by column, in the column's unit; a count is whole, however it was typed
 * Source: own choice.
 * @example stepsOf({ reference: { decimals: 1, step: 0.1 }, signal: { decimals: 3, step: 0.001 }, counts: { decimals:
 *   2, step: 0.01 }, value: { decimals: 1, step: 0.1 } }) // { reference: 0.1, signal: 0.001, counts: 1, value: 0.1 }
 */
export function stepsOf({ reference, signal, value }: ReadingResolutions) {
  return { reference: reference.step, signal: signal.step, counts: 1, value: value.step };
}

function resolutionOf(written: WrittenNumber, columnUnit: string | undefined): TypedResolution {
  const { value, unit, decimals, step: stepOfFraction } = written;
  const [from, to] = [unitOf(unit ?? ""), unitOf(columnUnit ?? "")];
  const typed = { decimals, step: stepOfFraction ?? 10 ** -decimals };
  if (from === undefined || to === undefined || from === to || !isOfOneKind(from, to)) return typed;
  const step = convertDifference(typed.step, from, to);
  return { decimals: decimalsThatShow(convert(value, from, to), step), step };
}

function isOfOneKind(from: UnitSymbol, to: UnitSymbol): boolean {
  return unitTable[from].kind === unitTable[to].kind;
}

/** Those of the value itself, as far as they are not far finer than the step. */
function decimalsThatShow(value: number, step: number): number {
  const ofStep = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const own = readNumber(String(Number(value.toPrecision(12))), "point")?.decimals ?? 0;
  return Math.min(Math.max(own, ofStep), ofStep + mostMore);
}
