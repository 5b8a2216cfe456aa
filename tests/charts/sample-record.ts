import { type CalibrationRecord, type PhaseRecord, recordSchema } from "../../src/record/record-schema.ts";

/** What may differ from the usual invented loop: 200 to 1200 mm on 4 to 20 mA, three cycles over eleven points. */
export type SampleOptions = {
  tag?: string;
  distanceUnit?: "mm" | "cm" | "m" | "in" | "ft";
  rangeLower?: number;
  rangeUpper?: number;
  tolerancePercent?: number;
  /** tolerance grows with the distance */
  isPercentOfReading?: boolean;
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

type Reading = PhaseRecord["readings"][number];
type Settings = Required<SampleOptions>;

const usual: Settings = {
  tag: "LT-204",
  distanceUnit: "mm",
  rangeLower: 200,
  rangeUpper: 1200,
  tolerancePercent: 0.5,
  isPercentOfReading: false,
  scale: 1,
  seed: 1,
  points: 11,
  cycles: 3,
  directions: ["rising", "falling"],
  phases: ["asFound", "asLeft"],
  hasController: false,
  leftOut: 0,
};

/** Invented numbers by a seeded formula, in the form of a true record. */
export function sampleRecord(options: SampleOptions = {}): CalibrationRecord {
  const settings = { ...usual, ...options };
  const { tag, distanceUnit, rangeLower, rangeUpper } = settings;
  const noise = seededNoise(settings.seed);
  const phases = Object.fromEntries(settings.phases.map((name) => [name, samplePhase(settings, name, noise)]));
  return recordSchema.parse({
    schema: "spanwright-record/1",
    software: { name: "spanwright", version: "0.0.0" },
    inputs: { files: [], rows: { instruments: [], calibrations: [], standards: [], outputs: [], readings: [] } },
    figureBasis: "IEC 61298-2 terms, averages of rising and falling",
    decisionRule: { name: "simple acceptance" },
    instrument: {
      tag,
      rangeLower,
      rangeUpper,
      distanceUnit,
      signalLower: 4,
      signalUpper: 20,
      signalUnit: "mA",
      tolerance: settings.tolerancePercent,
      toleranceBasis: settings.isPercentOfReading ? "percent of reading" : "percent of span",
      ...(settings.hasController ? { valueLower: 0, valueUpper: 100, valueUnit: "%" } : {}),
    },
    calibration: { calibration: "C-0001", tag },
    standards: [],
    outputs: [],
    phases,
    warnings: [],
  });
}

function samplePhase(settings: Settings, name: "asFound" | "asLeft", noise: () => number) {
  const readings = sampleReadings(settings, name, noise);
  const used = readings.filter(({ leftOut }) => leftOut === undefined);
  const points = pointsOf(used);
  const differences = points.flatMap(({ point, up, down }) =>
    up === null || down === null ? [] : [{ point, percentSpan: Math.abs(up - down) }],
  );
  const worst = differences.reduce<(typeof differences)[number] | null>(
    (left, right) => (left === null || right.percentSpan > left.percentSpan ? right : left),
    null,
  );
  const { rangeLower, rangeUpper } = settings;
  const errorLine = lineOf(used.map(({ reference, errorPercentSpan }) => [reference, errorPercentSpan ?? 0]));
  const signalLine = lineOf(used.map(({ reference, signal }) => [reference, signal ?? 0]));
  const none = { independent: null, terminal: null, zeroBased: null, leastSquares: null };
  return {
    readings,
    judged: "signal",
    counted: {
      readings: readings.length,
      used: used.length,
      leftOut: readings.length - used.length,
      points: points.length,
      cycles: settings.cycles,
    },
    decimals: {
      reference: Math.max(0, 4 - Math.round(Math.log10(rangeUpper - rangeLower))),
      signal: 3,
      counts: 0,
      value: 2,
    },
    fit: {
      n: used.length,
      ...signalLine,
      slopeStdError: null,
      interceptStdError: null,
      residualStdDev: null,
      rSquared: null,
    },
    zeroError: { percentSpan: errorLine.intercept + errorLine.slope * rangeLower, standardUncertainty: null },
    spanError: { percentSpan: errorLine.slope * (rangeUpper - rangeLower), standardUncertainty: null },
    inaccuracy: null,
    maximumMeasuredError: null,
    linearity: none,
    hysteresis: worst === null ? null : { ...worst, withinOneCycle: null },
    repeatability: null,
    points,
    loopError: null,
    worst: null,
    verdicts: { sensor: null, controller: null },
    verdict: null,
    notDetermined: {},
  };
}

function sampleReadings(settings: Settings, name: "asFound" | "asLeft", noise: () => number): Reading[] {
  const { rangeLower, rangeUpper, points, cycles, directions } = settings;
  const span = rangeUpper - rangeLower;
  const readings: Reading[] = [];
  for (let cycle = 1; cycle <= cycles; cycle += 1) {
    for (const direction of directions) {
      for (let index = 0; index < points; index += 1) {
        const part = (direction === "rising" ? index : points - 1 - index) / (points - 1);
        const reference = rangeLower + part * span + 0.0002 * span * noise();
        readings.push(
          sampleReading(settings, name, { row: readings.length + 2, cycle, direction, part, reference }, noise),
        );
      }
    }
  }
  for (let index = 0; index < settings.leftOut; index += 1) {
    const reading = readings[7 * (index + 1)];
    if (reading !== undefined) reading.leftOut = "target moved";
  }
  return readings;
}

type Place = { row: number; cycle: number; direction: "rising" | "falling"; part: number; reference: number };

function sampleReading(settings: Settings, name: "asFound" | "asLeft", place: Place, noise: () => number): Reading {
  const { rangeLower, rangeUpper, tolerancePercent, isPercentOfReading } = settings;
  const { part, reference, direction } = place;
  const span = rangeUpper - rangeLower;
  const bow = Math.sin(Math.PI * part);
  const dead = (direction === "rising" ? -1 : 1) * (0.05 + 0.05 * bow);
  const percent =
    settings.scale *
    ((name === "asFound" ? 0.12 + 0.42 * part : -0.06 + 0.04 * part) + 0.12 * bow + dead + 0.05 * noise());
  const tolerance = (tolerancePercent / 100) * (isPercentOfReading ? reference : span);
  const loopPercent = percent + (name === "asFound" ? -0.35 + 0.2 * part : 0.05) + 0.03 * noise();
  return {
    row: place.row,
    cycle: place.cycle,
    direction,
    reference,
    point: rangeLower + part * span,
    signal: 4 + (16 * (reference - rangeLower)) / span + 0.16 * percent,
    indicated: reference + (percent * span) / 100,
    errorDistance: (percent * span) / 100,
    errorPercentSpan: percent,
    toleranceLow: -tolerance,
    toleranceHigh: tolerance,
    ...(settings.hasController
      ? { value: (100 * (reference - rangeLower)) / span + loopPercent, loopErrorDistance: (loopPercent * span) / 100 }
      : {}),
  };
}

function pointsOf(readings: readonly Reading[]) {
  const nominal = [...new Set(readings.map(({ point }) => point))].sort((left, right) => left - right);
  return nominal.map((point) => {
    const here = readings.filter((reading) => reading.point === point);
    const up = meanOf(here.filter(({ direction }) => direction === "rising"));
    const down = meanOf(here.filter(({ direction }) => direction === "falling"));
    const reference = here.reduce((sum, reading) => sum + reading.reference, 0) / here.length;
    return { point, reference, up, down, mean: up !== null && down !== null ? (up + down) / 2 : (up ?? down ?? 0) };
  });
}

function meanOf(readings: readonly Reading[]): number | null {
  if (readings.length === 0) return null;
  return readings.reduce((sum, { errorPercentSpan }) => sum + (errorPercentSpan ?? 0), 0) / readings.length;
}

function lineOf(pairs: readonly (readonly [number, number])[]): { slope: number; intercept: number } {
  const meanX = pairs.reduce((sum, [x]) => sum + x, 0) / pairs.length;
  const meanY = pairs.reduce((sum, [, y]) => sum + y, 0) / pairs.length;
  const products = pairs.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const squares = pairs.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const slope = products / squares;
  return { slope, intercept: meanY - slope * meanX };
}

/** Lehmer generator (Park and Miller, Communications of the ACM 31, 1192 (1988)), made into numbers from −1 to 1. */
function seededNoise(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return (2 * state) / 2_147_483_647 - 1;
  };
}
