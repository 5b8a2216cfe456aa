import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

type Row = Readonly<Record<string, string | number>>;

const ranges = [
  { unit: "mm", lower: 200, upper: 2000 },
  { unit: "cm", lower: 9000, upper: 9100 },
  { unit: "m", lower: 0, upper: 6.5 },
  { unit: "in", lower: 4, upper: 24 },
  { unit: "ft", lower: -2, upper: 30 },
] as const;
const signals = [
  { unit: "mA", lower: 4, upper: 20, fault: 3.6 },
  { unit: "V", lower: 10, upper: 0 },
  { unit: "mA", lower: 20, upper: 4, fault: 21 },
  { unit: "V", lower: 1, upper: 5, fault: 0.2, fault_low: 0.5 },
  { unit: "mA", lower: 0, upper: 20 },
  { unit: "V", lower: 0.5, upper: 4.5, fault: 4.9, fault_high: 4.8 },
  { unit: "V", lower: 0, upper: 5 },
] as const;
const tolerances: readonly Row[] = [
  { tolerance: 0.5, tolerance_basis: "percent of span" },
  { tolerance: 0.4, tolerance_basis: "percent of reading", tolerance_minus: 0.7 },
  { tolerance: 0.02, tolerance_basis: "distance" },
  { tolerance: 0.05, tolerance_basis: "signal" },
  {
    tolerance: 0.1,
    tolerance_basis: "percent of span",
    second_tolerance: 0.2,
    second_tolerance_basis: "percent of reading",
    second_tolerance_minus: 0.3,
  },
];
const typedStages = [["signal"], ["signal", "value"], ["signal", "counts", "value"], ["value"], ["counts"]] as const;
const decisionRules = ["simple acceptance", "guard band", "non-binary guard band", "managed guard band"] as const;
const directionsOf = [["rising", "falling"], ["rising"], ["rising", "falling"], ["falling"]] as const;

/** Number of loops in the workbook; one phase each, every other one as left too. */
export const loopCount = 21;

/** Its rail has drifted for so long that nothing else counts, and it is off by about its tolerance. */
const doubtedLoop = 20;

/**
 * Writes a workbook of twenty-one loops, no two alike, and gives its folder: every unit, signals rising and falling,
 * one direction only, one cycle only, two test points only, named and unnamed points, rejected and fault readings,
 * every decision rule, and standards with every gap that a workbook may have.
 */
export function writeGeneratedWorkbook(seed: number): string {
  const folder = mkdtempSync(join(tmpdir(), "spanwright-generated-"));
  const random = mulberry32(seed);
  const indices = Array.from({ length: loopCount }, (_, index) => index);
  save(folder, "instruments", indices.map(instrumentRow));
  save(folder, "calibrations", indices.map(calibrationRow));
  save(
    folder,
    "standards",
    indices.flatMap((index) => standardsOf(index)),
  );
  save(
    folder,
    "readings",
    indices.flatMap((index) => readingRows(index, random)),
  );
  return folder;
}

function traits(index: number) {
  return {
    range: ranges[index % ranges.length] as (typeof ranges)[number],
    signal: signals[index % signals.length] as Partial<Record<"fault" | "fault_low" | "fault_high", number>> &
      (typeof signals)[number],
    stages: typedStages[Math.floor(index / 2) % typedStages.length] as readonly string[],
    directions: directionsOf[index % directionsOf.length] as readonly string[],
    cycles: 1 + (index % 3),
    points: 2 + ((index * 7) % 10),
    isNamed: index % 3 !== 0,
  };
}

function instrumentRow(index: number): Row {
  const { range, signal } = traits(index);
  return {
    tag: `G-${index}`,
    range_lower: range.lower,
    range_upper: range.upper,
    distance_unit: range.unit,
    signal_lower: signal.lower,
    signal_upper: signal.upper,
    signal_unit: signal.unit,
    fault_low: signal.fault_low ?? "",
    fault_high: signal.fault_high ?? "",
    counts_lower: index % 2 === 0 ? 0 : 32767,
    counts_upper: index % 2 === 0 ? 27648 : 6553,
    principle: index % 3 === 0 ? "ultrasonic" : "laser",
    temperature_compensated: index % 9 === 0 ? "yes" : "no",
    decision_rule: decisionRules[Math.floor(index / 3) % decisionRules.length] as string,
    guard_factor: index % 5 === 0 ? 0.5 : "",
    value_lower: 100,
    value_upper: index % 4 === 0 ? 0 : 250,
    tolerance: "",
    tolerance_basis: "",
    tolerance_minus: "",
    second_tolerance: "",
    second_tolerance_basis: "",
    second_tolerance_minus: "",
    ...tolerances[index % tolerances.length],
  };
}

function calibrationRow(index: number): Row {
  return {
    calibration: `C-${index}`,
    tag: `G-${index}`,
    performed_on: "2026-05-04",
    performed_by: "Nobody Example",
    standards: standardsOf(index)
      .map(({ standard }) => standard)
      .join(" + "),
    air_temperature: index % 6 === 0 ? "" : 17.5,
    alignment_angle: index % 4 === 1 ? "" : 0.25 * (index % 4),
  };
}

/** Uncertainties from 0.002 to 0.5 % of span: some budgets are all scatter, some all certificate. */
function standardsOf(index: number): readonly Row[] {
  const { range, signal } = traits(index);
  const gaps = (index * 3 + Math.floor(index / 8)) % 8;
  const part = [0.00002, 0.0002, 0.001, 0.005][index % 4] as number;
  const otherUnit = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 }[range.unit];
  const rail = statedStandard(`RAIL-${index}`, "distance", range.unit, part * (range.upper - range.lower));
  const meter = statedStandard(
    `METER-${index}`,
    { mA: "current", V: "voltage" }[signal.unit],
    signal.unit,
    0.0005 + 0.3 * part,
  );
  const all: Readonly<Record<number, readonly Row[]>> = {
    0: [rail, meter],
    1: [],
    2: [
      scaled({ ...rail, coverage_factor: "", uncertainty_unit: "mm" }, otherUnit),
      scaled({ ...meter, uncertainty_unit: `m${signal.unit}`.replace("mmA", "µA") }, 1000),
    ],
    3: [{ ...rail, drift_per_year: "", relative_uncertainty: "" }],
    4: [{ ...rail, quantity: "", uncertainty_unit: "%" }, meter],
    5: [rail, { ...rail, standard: `RAIL-${index}-2`, coverage_factor: 2.87 }, { ...meter, resolution: "" }],
    6: [
      { ...rail, expanded_uncertainty: "" },
      { ...meter, coverage_factor: 1.65 },
    ],
    7: [
      { ...rail, resolution: "", drift_per_year: 0, relative_uncertainty: 0 },
      { ...meter, drift_per_year: "", resolution: 0 },
    ],
  };
  if (index === doubtedLoop) return [{ ...rail, drift_per_year: 0.03 * (range.upper - range.lower) }];
  const thermometer = statedStandard(`TH-${index}`, "temperature", index % 2 === 0 ? "°C" : "°F", 0.4);
  return [...(all[gaps] ?? []), ...(index % 3 === 0 && gaps !== 1 ? [thermometer] : [])];
}

function statedStandard(standard: string, quantity: string, unit: string, uncertainty: number): Row {
  return {
    standard,
    quantity,
    certificate: `EX-${standard}`,
    calibrated_on: "2026-01-14",
    due_on: "2027-01-14",
    expanded_uncertainty: uncertainty,
    relative_uncertainty: { distance: 0.01, current: 0.02 }[quantity] ?? "",
    uncertainty_unit: unit,
    coverage_factor: 2,
    resolution: uncertainty / 4,
    drift_per_year: uncertainty / 2,
  };
}

function scaled(row: Row, factor: number): Row {
  const times = (value: string | number | undefined) => (typeof value === "number" ? value * factor : (value ?? ""));
  const { expanded_uncertainty, resolution, drift_per_year } = row;
  return {
    ...row,
    expanded_uncertainty: times(expanded_uncertainty),
    resolution: times(resolution),
    drift_per_year: times(drift_per_year),
  };
}

function readingRows(index: number, random: () => number): readonly Row[] {
  const { directions, cycles, points, stages, signal } = traits(index);
  const phases = index % 2 === 0 ? ["as_found"] : ["as_found", "as_left"];
  const rows = phases.flatMap((phase) =>
    Array.from({ length: cycles }, (_, cycle) => cycle + 1).flatMap((cycle) =>
      directions.flatMap((direction) =>
        Array.from({ length: points }, (_, point) => (direction === "rising" ? point : points - 1 - point)).map(
          (point) => readingRow(index, { phase, cycle, direction, point }, random),
        ),
      ),
    ),
  );
  const spoilt = points > 2 ? Math.floor(random() * points) : -1;
  const spoiling =
    signal.fault && stages.includes("signal") ? { signal: signal.fault } : { rejected: "target slipped" };
  return rows.map((row, place) => (place === spoilt ? { ...row, ...spoiling } : row));
}

/** Four digits of the span, as people type; every third loop with all digits that a program writes. */
function typed(value: number, span: number, index: number): number | string {
  return index % 3 === 2 ? value : value.toFixed(Math.max(0, 4 - Math.ceil(Math.log10(span))));
}

type Spot = { phase: string; cycle: number; direction: string; point: number };

function readingRow(index: number, { phase, cycle, direction, point }: Spot, random: () => number): Row {
  const { range, points, stages, isNamed } = traits(index);
  const span = range.upper - range.lower;
  const nominal = range.lower + (point / (points - 1)) * span;
  const reference = nominal + (random() - 0.5) * 0.004 * span;
  const part = (reference - range.lower) / span;
  const bow = 0.004 * part * (1 - part) * (direction === "rising" ? 1 : -2);
  const shift = index === doubtedLoop ? 0.005 : 0.001;
  const indicated = shift + part * 1.002 + bow + 0.002 * (random() - 0.5);
  const row = instrumentRow(index);
  const shown = (stage: string) => {
    const ends = [row[`${stage}_lower`], row[`${stage}_upper`]] as [number, number];
    const output = ends[0] + (indicated + 0.001 * random()) * (ends[1] - ends[0]);
    return stages.includes(stage) ? typed(output, Math.abs(ends[1] - ends[0]), index) : "";
  };
  return {
    calibration: `C-${index}`,
    phase,
    cycle: index % 4 === 2 ? "" : cycle,
    direction,
    point: isNamed ? nominal : "",
    reference: typed(reference, span, index),
    signal: shown("signal"),
    counts: shown("counts"),
    value: shown("value"),
    rejected: "",
  };
}

function save(folder: string, table: string, rows: readonly Row[]): void {
  const columns = Object.keys(rows[0] ?? {});
  const lines = rows.map((row) => columns.map((column) => row[column]).join(","));
  writeFileSync(join(folder, `${table}.csv`), `${[columns.join(","), ...lines].join("\n")}\n`);
}

/** Mulberry32: a uniform stream from 0 to below 1 that is the same on every machine. */
function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
