import type { Calibration, LoopCheck, Reading, Trip } from "../../../src/model/calibration.ts";
import type { Instrument, Output } from "../../../src/model/instrument.ts";
import type { Draws } from "./seeded-draws.ts";

/** A kind of signal: its ends at the near and at the far end of the range. */
export type SignalKind = readonly [lower: number, upper: number, unit: "mA" | "V"];

export const signalKinds = {
  "4–20": [4, 20, "mA"],
  "20–4": [20, 4, "mA"],
  "0–20": [0, 20, "mA"],
  "0–10": [0, 10, "V"],
  "10–0": [10, 0, "V"],
  "0–5": [0, 5, "V"],
  "1–5": [1, 5, "V"],
} as const satisfies Record<string, SignalKind>;
export type KindName = keyof typeof signalKinds;

/** Where a reading is taken, and what came before. */
export type Moment = {
  /** Part of the range, 0 to 1. */
  part: number;
  /** Reference distance, exact. */
  distance: number;
  direction: "rising" | "falling";
  cycle: number;
  place: number;
  isFirstOfRun: boolean;
  minutes: number;
  duration: number;
  /** What the sensor gave at the reading before. */
  signalBefore: number | undefined;
};

/** What is changed on the way from the target to the sheet; each step gets what the healthy one would give. */
export type Fault = {
  /** Part of the range that the sensor sees, before noise. */
  seen?: (part: number, moment: Moment) => number;
  noise?: (noise: number, moment: Moment) => number;
  signal?: (signal: number, moment: Moment) => number;
  signalAtCard?: (signal: number, moment: Moment) => number;
  /** Part of the card's counts between those of the two ends of the range. */
  counts?: (part: number, moment: Moment) => number;
  /** Part of the controller's value between those of the two ends of the range. */
  value?: (part: number, moment: Moment) => number;
  /** The value in its own unit. */
  shown?: (value: number, moment: Moment) => number;
  sheet?: (readings: Reading[]) => Reading[];
};

/** Everything about a drawn loop but its fault. */
export type Setting = {
  kind: SignalKind;
  rangeLower: number;
  span: number;
  points: readonly number[];
  cycles: number;
  noise: number;
  hasCounts: boolean;
  hasCard: boolean;
  hasTimes: boolean;
  valueEnds: readonly [number, number];
  instrument: Partial<Instrument>;
  calibration: Partial<Calibration>;
  outputs: Output[];
  trips: Trip[];
  loopChecks: LoopCheck[];
};

export function drawSetting(draws: Draws, kinds: readonly KindName[]): Setting {
  const kind = signalKinds[draws.pick(kinds)];
  const rangeLower = Math.round(draws.between(100, 500));
  const span = Math.round(draws.between(500, 5000));
  const count = draws.pick([6, 9, 11]);
  return {
    kind,
    rangeLower,
    span,
    points: Array.from({ length: count }, (_, place) => place / (count - 1)),
    cycles: draws.pick([2, 3]),
    noise: 0.01 * 10 ** draws.between(0, 1),
    hasCounts: draws.chance(0.5),
    hasCard: false,
    hasTimes: draws.chance(0.7),
    valueEnds: draws.pick([
      [0, 100],
      [100, 0],
      [rangeLower / 1000, (rangeLower + span) / 1000],
      [0, span / 1000],
    ] as const),
    instrument: {},
    calibration: {},
    outputs: [],
    trips: [],
    loopChecks: [],
  };
}

const fullScaleCounts = 27648;

export function instrumentOf(setting: Setting): Instrument {
  const [signalLower, signalUpper, signalUnit] = setting.kind;
  const [valueLower, valueUpper] = setting.valueEnds;
  return {
    tag: "LT-1",
    rangeLower: setting.rangeLower,
    rangeUpper: setting.rangeLower + setting.span,
    distanceUnit: "mm",
    signalLower,
    signalUpper,
    signalUnit,
    tolerance: 0.5,
    toleranceBasis: "percent of span",
    ...(setting.hasCounts && { countsLower: 0, countsUpper: fullScaleCounts }),
    valueLower,
    valueUpper,
    valueUnit: "EU",
    ...setting.instrument,
  };
}

/** The sheet that a technician would have written; numbers are rounded as a meter and a display round them. */
export function takeReadings(setting: Setting, fault: Fault, draws: Draws): Reading[] {
  const { points, cycles } = setting;
  const runs = Array.from({ length: cycles }, (_, cycle) => [
    { cycle: cycle + 1, direction: "rising" as const, run: points },
    { cycle: cycle + 1, direction: "falling" as const, run: points.toReversed() },
  ]).flat();
  const duration = 1.5 * runs.length * points.length;
  let minutes = 0;
  let signalBefore: number | undefined;
  const readings = runs.flatMap(({ cycle, direction, run }) =>
    run.map((nominal, place) => {
      minutes += 1 + Math.floor(2 * draws.uniform());
      const part = nominal + 0.0005 * draws.normal();
      const distance = setting.rangeLower + part * setting.span;
      const isFirstOfRun = place === 0;
      const moment = { part, distance, direction, cycle, place, isFirstOfRun, minutes, duration, signalBefore };
      const reading = readingAt(setting, fault, moment, nominal, draws);
      signalBefore = reading.signal;
      return reading;
    }),
  );
  return fault.sheet?.(readings) ?? readings;
}

function readingAt(setting: Setting, fault: Fault, moment: Moment, nominal: number, draws: Draws): Reading {
  const { kind, span, rangeLower, hasCard, hasCounts, hasTimes } = setting;
  const [signalLower, signalUpper] = kind;
  const noise = (setting.noise / 100) * draws.normal();
  const seen = (fault.seen?.(moment.part, moment) ?? moment.part) + (fault.noise?.(noise, moment) ?? noise);
  const ideal = signalLower + seen * (signalUpper - signalLower);
  const signal = fault.signal?.(ideal, moment) ?? ideal;
  const atCard = fault.signalAtCard?.(signal, moment) ?? signal;
  const cardPart = (atCard - signalLower) / (signalUpper - signalLower);
  const countsPart = fault.counts?.(cardPart, moment) ?? cardPart;
  const counts = Math.round(countsPart * fullScaleCounts);
  const rounded = hasCounts ? counts / fullScaleCounts : countsPart;
  const valuePart = fault.value?.(rounded, moment) ?? rounded;
  const [valueLower, valueUpper] = setting.valueEnds;
  const value = valueLower + valuePart * (valueUpper - valueLower);
  return {
    calibration: "C-1",
    phase: "as_found",
    cycle: moment.cycle,
    direction: moment.direction,
    point: rangeLower + nominal * span,
    reference: roundedTo(moment.distance, 1),
    signal: roundedTo(signal, 3),
    ...(hasCard && { signalAtCard: roundedTo(atCard, 3) }),
    ...(hasCounts && { counts }),
    value: roundedTo(fault.shown?.(value, moment) ?? value, valueDecimals(setting)),
    ...(hasTimes && { time: new Date(moment.minutes * 60_000).toISOString().slice(0, 16) }),
  };
}

/** Four digits behind what the span of the value needs: units that are mixed up leave some. */
export function valueDecimals({ valueEnds: [lower, upper] }: Setting): number {
  return Math.max(0, 4 - Math.floor(Math.log10(Math.abs(upper - lower))));
}

function roundedTo(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
