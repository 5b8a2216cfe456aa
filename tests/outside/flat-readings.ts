import type { CalibrationRecord, PhaseRecord } from "../../src/record/record-schema.ts";

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

const readingColumns = ["cycle", "direction", "point", "reference", "signal", "counts", "value", "rejected"] as const;

/**
 * The readings of records as one table for another program, each with what its instrument should do. They are what
 * was typed, not what was computed: nothing in the table comes from the figures that are to be checked.
 */
export function flatReadings(records: readonly CalibrationRecord[]): string {
  const header = ["calibration", "phase", ...readingColumns, ...Object.keys(instrumentColumns)];
  return `${[header, ...records.flatMap(rowsOf)].map((row) => row.join(",")).join("\n")}\n`;
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
