import { signalUnits } from "../../model/instrument-words.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { type UnitSymbol, unitOf, unitTable } from "../../units/unit-table.ts";
import { readTolerance, toleranceForms } from "../../workbook/cells/read-tolerance.ts";
import { changedRows } from "../../workbook/files/changed-rows.ts";
import { sheetBehind } from "../../workbook/files/place-of-table.ts";
import type { RawTable } from "../../workbook/files/raw-table.ts";
import { exampleOptions } from "../../workbook/look/example-options.ts";

/** What a lone table of readings needs to be looked at: the same as an instrument's row, as options. */
export type FirstLook = {
  range?: string | undefined;
  signal?: string | undefined;
  tolerance?: string | undefined;
  tag?: string | undefined;
  calibration?: string | undefined;
};

/** The file that the rows made from options are said to come from. */
export const commandLine = "command line";

type Cells = Record<string, string>;

/**
 * Makes a whole workbook of a lone table of readings: an instrument and its calibrations from the options, and in the
 * readings the columns calibration and phase where the table does without them.
 */
export function firstLookTables(
  readings: RawTable<"readings">,
  nameOfFile: string,
  options: FirstLook,
  problems: ProblemList,
): readonly RawTable[] {
  const tag = options.tag ?? nameOfFile;
  const instrument = { tag, ...instrumentCells(options, readings, problems) };
  const completed = withColumn(
    withColumn(readings, "phase", "as_found"),
    "calibration",
    options.calibration ?? nameOfFile,
  );
  const column = columnIndex(completed, "calibration");
  const named = new Set<string>();
  for (const { cells } of completed.rows) named.add(cells[column]?.trim() ?? "");
  named.delete("");
  return [
    tableOf("instruments", [instrument]),
    tableOf(
      "calibrations",
      [...named].map((calibration) => ({ calibration, tag })),
    ),
    completed,
  ];
}

/** The options as text, in the place of the bytes of a file. */
export function optionsText(options: FirstLook): string {
  return Object.entries(options)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `--${name} ${value}`)
    .join("\n");
}

const optionForms = {
  range: "--range with two distances and a unit, such as 200:2000mm",
  signal: "--signal with two signals and a unit, such as 4:20mA, 20:4mA or 0:10V",
  tolerance: `--tolerance with a number and what it is a part of, such as 0.5%span or 0.1%span+2mm; also ${toleranceForms}`,
} as const;

function instrumentCells(options: FirstLook, readings: RawTable<"readings">, problems: ProblemList): Cells {
  tellMissing(options, readings, problems);
  const range = pairOf("range", options.range, problems);
  const signal = pairOf("signal", options.signal, problems);
  return {
    ...(range && { range_lower: range.first, range_upper: range.second, distance_unit: range.unit }),
    ...(signal && { signal_lower: signal.first, signal_upper: signal.second, signal_unit: signal.unit }),
    ...toleranceCells(options.tolerance, problems),
  };
}

/** All that is missing in one message, with an example that the numbers of the table themselves suggest. */
function tellMissing(options: FirstLook, readings: RawTable<"readings">, problems: ProblemList): void {
  const missing = (["range", "signal", "tolerance"] as const).filter((option) => options[option] === undefined);
  if (missing.length === 0) return;
  const found = exampleOptions(readings);
  const example = found && { ...found, tolerance: "0.5%span" };
  const words = missing.map((option) => `--${option}`);
  const last = words.at(-1) ?? "";
  const option = words.length === 1 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
  const forms = missing.map((one) => optionForms[one]).join("; ");
  const suited = example && missing.map((one) => `--${one} ${example[one]}`).join(" ");
  const guess = example?.isUnitGuessed && missing.includes("range") ? " (the unit of the distances is a guess)" : "";
  const values = { option, accepted: suited ? `${forms}; for these readings perhaps ${suited}${guess}` : forms };
  problems.add("options/readings-alone", { file: commandLine }, { values });
}

const amount = String.raw`[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d+)?`;
const pair = new RegExp(
  String.raw`^(${amount})\s*([^\d\s:.,+-]*)\s*(?::|\.{2,3}|…|–|—|-|~|\bto\b)\s*(${amount})\s*(\S+(?:\s\S+)?)$`,
  "iu",
);

/** "4:20mA", "4-20 mA", "4 to 20 mA", "4 mA … 20 mA"; a decimal comma is a mark too. */
function pairOf(option: "range" | "signal", written: string | undefined, problems: ProblemList) {
  if (written === undefined) return undefined;
  const [, first, firstUnit = "", second, unitWord = ""] = pair.exec(written.trim().replaceAll("\u2212", "-")) ?? [];
  const unit = unitOf(unitWord);
  const isOneUnit = firstUnit === "" || unitOf(firstUnit) === unit;
  if (first === undefined || second === undefined || !isUnitFor(option, unit) || !isOneUnit) {
    return notUnderstood(option, written, problems);
  }
  return { first: first.replace(",", "."), second: second.replace(",", "."), unit };
}

function isUnitFor(option: "range" | "signal", unit: UnitSymbol | undefined): unit is UnitSymbol {
  if (unit === undefined) return false;
  return option === "range"
    ? unitTable[unit].kind === "distance"
    : signalUnits.some((signalUnit) => signalUnit === unit);
}

/** In words, as a cell of the table takes it; with a decimal point, whichever mark was typed. */
function toleranceCells(written: string | undefined, problems: ProblemList): Cells {
  if (written === undefined) return {};
  const tolerance = written.replace(/(\d),(\d)/gu, "$1.$2");
  return readTolerance(tolerance, "point") === undefined
    ? (notUnderstood("tolerance", written, problems) ?? {})
    : { tolerance };
}

function notUnderstood(option: keyof typeof optionForms, read: string, problems: ProblemList): undefined {
  const accepted = optionForms[option];
  problems.add("options/not-understood", { file: commandLine }, { read, values: { option: `--${option}`, accepted } });
}

function tableOf(table: "instruments" | "calibrations", rows: readonly Cells[]): RawTable {
  const header = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    table,
    file: commandLine,
    header,
    headerLine: 1,
    rows: rows.map((row) => ({ line: 1, cells: header.map((name) => row[name] ?? "") })),
    decimalMark: "point",
    description: { name: commandLine, encoding: "utf-8", delimiter: null, decimalMark: "point" },
  };
}

function withColumn(table: RawTable, name: string, value: string): RawTable {
  if (columnIndex(table, name) !== -1 || table.header.length === 0) return table;
  return {
    ...table,
    ...sheetBehind([name], table),
    header: [name, ...table.header],
    rows: changedRows(table.rows, (cells) => [value, ...cells]),
  };
}

function columnIndex({ header }: RawTable, name: string): number {
  return header.findIndex((cell) => cell.trim().toLowerCase() === name);
}
