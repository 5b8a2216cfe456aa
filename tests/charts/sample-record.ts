import { assembleRecord } from "../../src/assembly/assemble-record.ts";
import type { Reading } from "../../src/model/calibration.ts";
import type { TableRow } from "../../src/model/calibration-case.ts";
import type { DecisionRuleName } from "../../src/model/instrument-words.ts";
import { type CalibrationRecord, recordSchema } from "../../src/record/record-schema.ts";

/** What may differ from the usual invented loop: 200 to 1200 mm on 4 to 20 mA, three cycles over eleven points. */
export type SampleOptions = {
  tag?: string;
  distanceUnit?: "mm" | "cm" | "m" | "in" | "ft";
  rangeLower?: number;
  rangeUpper?: number;
  tolerancePercent?: number;
  /** tolerance grows with the distance */
  isPercentOfReading?: boolean;
  decisionRule?: DecisionRuleName;
  /** expanded uncertainty of the reference standard, percent of span */
  standardPercent?: number;
  /** multiplies every error */
  scale?: number;
  seed?: number;
  points?: number;
  cycles?: number;
  directions?: readonly ("rising" | "falling")[];
  phases?: readonly ("asFound" | "asLeft")[];
  hasController?: boolean;
  leftOut?: number;
};

type Settings = Required<SampleOptions>;
type PhaseName = Settings["phases"][number];

const usual: Settings = {
  tag: "LT-204",
  distanceUnit: "mm",
  rangeLower: 200,
  rangeUpper: 1200,
  tolerancePercent: 0.5,
  isPercentOfReading: false,
  decisionRule: "simple acceptance",
  standardPercent: 0.08,
  scale: 1,
  seed: 1,
  points: 11,
  cycles: 3,
  directions: ["rising", "falling"],
  phases: ["asFound", "asLeft"],
  hasController: false,
  leftOut: 0,
};

const made = new Map<string, CalibrationRecord>();

/**
 * Invented readings by a seeded formula; everything else is computed from them as for a true record, once for all tests
 * of a process: each has a record of its own, which it may change.
 */
export function sampleRecord(options: SampleOptions = {}): CalibrationRecord {
  const settings = { ...usual, ...options };
  const key = JSON.stringify(settings);
  const record = made.get(key) ?? recordOf(settings);
  made.set(key, record);
  return structuredClone(record);
}

function recordOf(settings: Settings): CalibrationRecord {
  const noise = seededNoise(settings.seed);
  const none = { outputs: [], trips: [], loopChecks: [], controllerLimits: [], candidates: [], files: [] };
  const rows = {
    ...none,
    calibration: tableRow({ calibration: "C-0001", tag: settings.tag, performedOn: "2026-03-02" }),
    instrument: tableRow(instrumentOf(settings)),
    standards: [tableRow(standardOf(settings))],
    readings: settings.phases.flatMap((name) => sampleReadings(settings, name, noise)),
  };
  const record = assembleRecord(rows, { softwareVersion: "0.0.0", digests: new Map(), warnings: [] });
  return recordSchema.parse(record);
}

function tableRow<Row>(row: Row, line = 2, cells: Readonly<Record<string, string>> = {}): TableRow<Row> {
  return { row, file: "sample.csv", line, cells };
}

/** Fault levels that no signal reaches, so that the greatest errors are drawn too. */
function instrumentOf(settings: Settings) {
  return {
    tag: settings.tag,
    rangeLower: settings.rangeLower,
    rangeUpper: settings.rangeUpper,
    distanceUnit: settings.distanceUnit,
    signalLower: 4,
    signalUpper: 20,
    signalUnit: "mA" as const,
    tolerance: settings.tolerancePercent,
    toleranceBasis: settings.isPercentOfReading ? ("percent of reading" as const) : ("percent of span" as const),
    decisionRule: settings.decisionRule,
    faultLow: -1e9,
    faultHigh: 1e9,
    ...(settings.hasController ? { valueLower: 0, valueUpper: 100, valueUnit: "%" } : {}),
  };
}

function standardOf({ standardPercent, rangeLower, rangeUpper, distanceUnit }: Settings) {
  return {
    standard: "RAIL-1",
    certificate: "CERT-1",
    calibratedOn: "2026-01-05",
    dueOn: "2027-01-05",
    expandedUncertainty: (standardPercent / 100) * (rangeUpper - rangeLower),
    uncertaintyUnit: distanceUnit,
    coverageFactor: 2,
  };
}

function sampleReadings(settings: Settings, name: PhaseName, noise: () => number): TableRow<Reading>[] {
  const { rangeLower, rangeUpper, points, cycles, directions } = settings;
  const span = rangeUpper - rangeLower;
  const readings: Reading[] = [];
  for (let cycle = 1; cycle <= cycles; cycle += 1) {
    for (const direction of directions) {
      for (let index = 0; index < points; index += 1) {
        const part = (direction === "rising" ? index : points - 1 - index) / (points - 1);
        const reference = rangeLower + part * span + 0.0002 * span * noise();
        readings.push(sampleReading(settings, name, { cycle, direction, part, reference }, noise));
      }
    }
  }
  for (let index = 0; index < settings.leftOut; index += 1) {
    const reading = readings[7 * (index + 1)];
    if (reading !== undefined) reading.rejected = "target moved";
  }
  return readings.map((reading, index) => tableRow(reading, index + 2, cellsOf(settings)));
}

type Place = { cycle: number; direction: "rising" | "falling"; part: number; reference: number };

function sampleReading(settings: Settings, name: PhaseName, place: Place, noise: () => number): Reading {
  const { rangeLower, rangeUpper } = settings;
  const { cycle, part, reference, direction } = place;
  const span = rangeUpper - rangeLower;
  const bow = Math.sin(Math.PI * part);
  const dead = (direction === "rising" ? -1 : 1) * (0.05 + 0.05 * bow);
  const percent =
    settings.scale *
    ((name === "asFound" ? 0.12 + 0.42 * part : -0.06 + 0.04 * part) + 0.12 * bow + dead + 0.05 * noise());
  const loopPercent = percent + (name === "asFound" ? -0.35 + 0.2 * part : 0.05) + 0.03 * noise();
  return {
    calibration: "C-0001",
    phase: name === "asFound" ? "as_found" : "as_left",
    cycle,
    direction,
    point: rangeLower + part * span,
    reference,
    signal: 4 + (16 * (reference - rangeLower)) / span + 0.16 * percent,
    ...(settings.hasController && { value: (100 * (reference - rangeLower)) / span + loopPercent }),
  };
}

/** Digits of the cells alone: the numbers of the readings keep all of theirs. */
function cellsOf({ rangeLower, rangeUpper }: Settings): Record<string, string> {
  const referenceDecimals = Math.max(0, 4 - Math.round(Math.log10(rangeUpper - rangeLower)));
  return { reference: (1).toFixed(referenceDecimals), signal: "4.000", value: "0.00" };
}

/** Lehmer generator (Park and Miller, Communications of the ACM 31, 1192 (1988)), made into numbers from −1 to 1. */
function seededNoise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return (2 * state) / 2_147_483_647 - 1;
  };
}
