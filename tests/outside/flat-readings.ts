import type { CalibrationRecord, PhaseRecord } from "../../src/record/record-schema.ts";
import { unitOf } from "../../src/units/unit-table.ts";

const instrumentColumns = {
  range_lower: "rangeLower",
  range_upper: "rangeUpper",
  signal_lower: "signalLower",
  signal_upper: "signalUpper",
  signal_unit: "signalUnit",
  counts_lower: "countsLower",
  counts_upper: "countsUpper",
  value_lower: "valueLower",
  value_upper: "valueUpper",
  tolerance: "tolerance",
  tolerance_basis: "toleranceBasis",
  tolerance_minus: "toleranceMinus",
  second_tolerance: "secondTolerance",
  second_tolerance_basis: "secondToleranceBasis",
  second_tolerance_minus: "secondToleranceMinus",
  fault_low: "faultLow",
  fault_high: "faultHigh",
} as const;

type Cells = Readonly<Record<string, string>>;

const readingColumns = [
  "cycle",
  "direction",
  "point",
  "reference",
  "signal",
  "signal_at_card",
  "counts",
  "value",
  "rejected",
] as const;

/**
 * The readings of records as one table for another program, each with what its instrument should do. They are what
 * was typed, not what was computed: nothing in the table comes from the figures that are to be checked.
 */
export function flatReadings(records: readonly CalibrationRecord[]): string {
  const header = ["calibration", "phase", ...readingColumns, ...Object.keys(instrumentColumns)];
  return tableText([header, ...records.flatMap(rowsOf)]);
}

const conditionColumns = {
  instruments: ["distance_unit", "principle", "temperature_compensated", "decision_rule", "guard_factor"],
  calibrations: ["performed_on", "air_temperature", "alignment_angle"],
} as const;

/** What each calibration states beside its readings, as typed, one row a calibration. */
export function flatConditions(records: readonly CalibrationRecord[]): string {
  const header = ["calibration", ...Object.values(conditionColumns).flat()];
  const rows = records.map(({ calibration, inputs: { rows: typed } }) => [
    calibration.calibration,
    ...conditionColumns.instruments.map((column) => withoutUnit(typed.instruments[0]?.cells[column], undefined)),
    ...conditionColumns.calibrations.map((column) =>
      withoutUnit(typed.calibrations[0]?.cells[column], column === "air_temperature" ? "°C" : undefined),
    ),
  ]);
  return tableText([header, ...rows]);
}

const standardColumns = [
  "expanded_uncertainty",
  "relative_uncertainty",
  "coverage_factor",
  "resolution",
  "drift_per_year",
] as const;

/** The standards that each calibration names, as typed, one row a standard and calibration. */
export function flatStandards(records: readonly CalibrationRecord[]): string {
  const header = ["calibration", "standard", "calibrated_on", "uncertainty_unit", ...standardColumns];
  const rows = records.flatMap(({ calibration, inputs }) =>
    inputs.rows.standards.map(({ cells }) => [
      calibration.calibration,
      cells.standard ?? "",
      cells.calibrated_on ?? "",
      plainUnit(cells.uncertainty_unit ?? ""),
      ...standardColumns.map((column) =>
        withoutUnit(cells[column], column === "relative_uncertainty" ? "%" : cells.uncertainty_unit),
      ),
    ]),
  );
  return tableText([header, ...rows]);
}

/** The other program reads plain letters alone. */
function plainUnit(unit: string): string {
  return (unitOf(unit) ?? unit).replace("µ", "u").replace("°", "deg").replace("%", "percent");
}

/** A number as typed, without the unit behind it, which must be the one that the column has. */
function withoutUnit(text = "", unit: string | undefined): string {
  const [, number, behind] = /^(-?\d+(?:[.,]\d+)?(?:e-?\d+)?)\s*(\D.*)?$/u.exec(text) ?? [];
  if (number === undefined || behind?.startsWith("-")) return text;
  if (behind !== undefined && behind !== unit) throw new RangeError(`withoutUnit: ${text} is not in ${unit}`);
  return number.replace(",", ".");
}

function tableText(rows: readonly (readonly string[])[]): string {
  return `${rows.map((row) => row.join(",")).join("\n")}\n`;
}

const phaseNames = { as_found: "asFound", as_left: "asLeft" } as const;

/** The phases of a record by their names in the tables. */
export function phasesOf(record: CalibrationRecord): readonly (readonly [string, PhaseRecord])[] {
  return Object.entries(phaseNames).flatMap(([name, key]) => {
    const phase = record.phases[key];
    return phase === undefined ? [] : [[name, phase] as const];
  });
}

function rowsOf({ inputs, instrument }: CalibrationRecord): readonly (readonly string[])[] {
  const described = Object.values(instrumentColumns).map((key) => String(instrument[key] ?? ""));
  return inputs.rows.readings.map(({ cells }) => [
    cells.calibration ?? "",
    cells.phase ?? "",
    ...readingColumns.map((column) => plainCell(cells, column)),
    ...described,
  ]);
}

function plainCell(cells: Cells, column: (typeof readingColumns)[number]): string {
  const text = cells[column] ?? "";
  if (column === "rejected") return text === "" ? "" : "yes";
  return text.replace(",", ".");
}
