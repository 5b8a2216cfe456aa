import { type Design, signalOfLength, spanOf } from "./loop.ts";
import type { MadePhase } from "./make-loop.ts";

/** One calibration of a workbook: a loop as found, and as left where it was read again. */
export type Sheet = { name: string; asFound: MadePhase; asLeft: MadePhase | null };

/** The tables of a workbook with a calibration for each loop, as texts by file name. */
export function workbookOf(sheets: readonly Sheet[]): Readonly<Record<string, string>> {
  return {
    "instruments.csv": table(sheets.map(instrumentCells)),
    "outputs.csv": table(sheets.flatMap(outputCells)),
    "standards.csv": table(sheets.flatMap(standardCells)),
    "calibrations.csv": table(sheets.map(calibrationCells)),
    "readings.csv": table(sheets.flatMap(readingCells)),
    "trips.csv": table(sheets.flatMap(tripCells)),
  };
}

type Cells = Record<string, string | number | null>;

/** Every column that any row has; a table without rows is left out of the workbook by being empty. */
function table(rows: readonly Cells[]): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const lines = rows.map((row) => columns.map((column) => row[column] ?? "").join(","));
  return rows.length === 0 ? "" : `${[columns.join(","), ...lines].join("\n")}\n`;
}

function instrumentCells({ name, asFound }: Sheet): Cells {
  const { design, plan } = asFound.loop;
  const { signal, value, range } = design;
  const hasController = plan.reads.counts || plan.reads.value;
  return {
    tag: tagOf(name),
    principle: design.principle,
    range_lower: inUnit(design, range.lower),
    range_upper: inUnit(design, range.upper),
    distance_unit: design.unit,
    signal_lower: signal.lower,
    signal_upper: signal.upper,
    signal_unit: signal.unit,
    ...toleranceCells(design),
    counts_lower: hasController ? design.counts.lower : null,
    counts_upper: hasController ? design.counts.upper : null,
    value_lower: hasController ? plain(value.lower) : null,
    value_upper: hasController ? plain(value.upper) : null,
    value_unit: hasController ? value.unit : null,
    temperature_compensated: plan.air === null ? null : plan.air.isCompensated ? "yes" : "no",
    taught_at: plan.air?.isStated ? plan.air.taught.toFixed(1) : null,
  };
}

function toleranceCells(design: Design): Cells {
  const { tolerance, toleranceBasis } = design;
  const amount = {
    "percent of span": (100 * tolerance) / spanOf(design),
    distance: tolerance / design.millimetresPerUnit,
    signal: Math.abs(signalOfLength(design, tolerance)),
  }[toleranceBasis];
  return { tolerance: plain(amount), tolerance_basis: toleranceBasis };
}

function outputCells({ name, asFound }: Sheet): readonly Cells[] {
  const { output, design } = asFound.loop;
  if (output === null) return [];
  return [
    {
      tag: tagOf(name),
      output: "Q1",
      set_point: inUnit(design, output.setPoint),
      set_point_tolerance: inUnit(design, output.tolerance),
      differential_max: output.differentialMaxPercent,
      repeat_max: 2,
      polarity: "PNP",
      function: "NO",
      controller_input: output.isMismatched ? "sourcing" : "sinking",
    },
  ];
}

function standardCells({ name, asFound }: Sheet): readonly Cells[] {
  const { design, plan } = asFound.loop;
  const usual = { calibrated_on: "2026-01-14", due_on: "2027-01-14", coverage_factor: 2, drift_per_year: 0 };
  return [
    {
      standard: `RULE-${name}`,
      quantity: "distance",
      certificate: `EX-${name}-1`,
      ...usual,
      expanded_uncertainty: inUnit(design, plan.referenceUncertainty),
      uncertainty_unit: design.unit,
      resolution: (10 ** -plan.decimals.reference).toFixed(plan.decimals.reference),
    },
    {
      standard: `METER-${name}`,
      quantity: design.signal.unit === "mA" ? "current" : "voltage",
      certificate: `EX-${name}-2`,
      ...usual,
      expanded_uncertainty: plain(plan.meterUncertainty),
      uncertainty_unit: design.signal.unit,
      resolution: (10 ** -plan.decimals.signal).toFixed(plan.decimals.signal),
    },
  ];
}

function calibrationCells({ name, asFound, asLeft }: Sheet): Cells {
  const { plan } = asFound.loop;
  return {
    calibration: name,
    tag: tagOf(name),
    performed_on: "2026-03-03",
    performed_by: "Ines Example",
    reason: "due",
    standards: `RULE-${name} + METER-${name}`,
    air_temperature: plan.air?.isStated ? plan.air.now.toFixed(1) : null,
    relative_humidity: plan.air?.isStated ? plan.air.humidity : null,
    target_tilt: plan.statedTilt,
    adjustment: asLeft === null ? "none" : "re-teach",
    adjustment_note: asLeft === null ? null : "adjusted after the readings as found",
  };
}

function readingCells({ name, asFound, asLeft }: Sheet): readonly Cells[] {
  const ofPhase = (phase: string, { loop, rows }: MadePhase, startMinutes: number) => {
    const { design, plan } = loop;
    return rows.map((row) => ({
      calibration: name,
      phase,
      cycle: row.cycle,
      direction: row.direction,
      point: plan.hasPointColumn ? inUnit(design, row.point) : null,
      reference: (row.reference / design.millimetresPerUnit).toFixed(plan.decimals.reference),
      signal: row.signal?.toFixed(plan.decimals.signal) ?? null,
      signal_at_card: row.card?.toFixed(plan.decimals.signal) ?? null,
      counts: row.counts,
      value: row.value?.toFixed(plan.decimals.value) ?? null,
      time: timeOf(startMinutes + row.minutes),
    }));
  };
  return [
    ...ofPhase("as_found", asFound, 0),
    ...(asLeft === null ? [] : ofPhase("as_left", asLeft, (asFound.rows.at(-1)?.minutes ?? 0) + 10)),
  ];
}

function tripCells({ name, asFound, asLeft }: Sheet): readonly Cells[] {
  const ofPhase = (phase: string, { loop, trips }: MadePhase) =>
    trips.map(({ cycle, direction, reference }) => ({
      calibration: name,
      phase,
      output: "Q1",
      direction,
      cycle,
      reference: (reference / loop.design.millimetresPerUnit).toFixed(loop.plan.decimals.reference),
    }));
  return [...ofPhase("as_found", asFound), ...(asLeft === null ? [] : ofPhase("as_left", asLeft))];
}

const tagOf = (name: string): string => `T-${name}`;

function inUnit({ millimetresPerUnit }: Design, millimetres: number): string {
  return plain(millimetres / millimetresPerUnit);
}

/** Enough digits for what the papers say, without the tail of a division. */
function plain(value: number): string {
  return String(Number(value.toPrecision(10)));
}

/** From four in the morning, so that the longest plan ends on its day. */
function timeOf(minutes: number): string {
  const whole = 240 + minutes;
  const [hour, minute] = [Math.floor(whole / 60), whole % 60];
  const day = 3 + Math.floor(hour / 24);
  return `2026-03-0${day}T${String(hour % 24).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}
