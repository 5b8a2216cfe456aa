import type { Random } from "./random.ts";

/** A pair of ends that stand for range_lower and range_upper. */
export type Ends = { lower: number; upper: number };

/** What the papers say of a loop. Lengths are in millimetres here; the tables have them in the loop's unit. */
export type Design = {
  principle: string;
  range: Ends;
  unit: string;
  millimetresPerUnit: number;
  signal: Ends & { unit: "mA" | "V" };
  counts: Ends;
  value: Ends & { unit: string };
  /** Greatest error allowed, either way; millimetres. */
  tolerance: number;
  toleranceBasis: "percent of span" | "distance" | "signal";
};

/** What the technician does, and with what. */
export type Plan = {
  points: readonly number[];
  cycles: number;
  isBothWays: boolean;
  /** Which columns are filled; `card` is the signal at the terminals of the input card. */
  reads: { signal: boolean; card: boolean; counts: boolean; value: boolean };
  /** Where the only meter of the signal stands. */
  meterAt: "sensor" | "card";
  hasPointColumn: boolean;
  decimals: { reference: number; signal: number; value: number };
  /** Expanded uncertainty (k = 2) of the reference; millimetres. */
  referenceUncertainty: number;
  meterUncertainty: number;
  minutesBetween: number;
  air: { now: number; taught: number; humidity: number; isStated: boolean; isCompensated: boolean } | null;
  /** Angle of the target that is written down; the true one is the sensor's. */
  statedTilt: number | null;
};

/** What the sensor truly does; lengths in millimetres. */
export type Sensor = {
  datumShift: number;
  /** Distances that it takes for the ends of its range. */
  taught: Ends;
  bow: number;
  bowShape: "bow" | "S";
  hysteresis: number;
  /** Part of the last move that it has not followed yet. */
  lag: number;
  warmUp: number;
  warmUpMinutes: number;
  /** Speed of sound that it assumes, over the true one. */
  airFactor: number;
  axisAngle: number;
  blindTo: number;
  blindWay: "flat" | "second echo";
  obstructionAt: number;
  lostBeyond: number;
  lostChance: number;
  lostWay: "low" | "high" | "hold";
  rails: { low: number; high: number };
};

/** Chance at work while it is read; standard deviations in millimetres. */
export type Noise = { white: number; whiteAtEnd: number; cycle: number; walk: number };

/** From the sensor's terminals to the card's. */
export type Wire = {
  leakOhms: number;
  supplyVolts: number;
  loopOhms: number;
  limit: number;
  /** What is left of the signal of a source that something draws on, seen at both ends. */
  overload: number;
  /** The same behind the sensor's terminals. */
  shunt: number;
  cardOffset: number;
  isOpen: boolean;
};

/** Input card and controller as they are set, which may not be as the papers say. */
export type Controller = {
  cardSignal: Ends;
  cardOffset: number;
  cardGain: number;
  stuckAt: number | null;
  isCrossed: boolean;
  counts: Ends;
  value: Ends;
  factor: number;
  clampLow: number;
  clampHigh: number;
  grid: number;
};

export type SwitchedOutput = {
  setPoint: number;
  tolerance: number;
  differentialMaxPercent: number;
  shift: number;
  differential: number;
  noise: number;
  chatters: boolean;
  isMismatched: boolean;
};

/** One loop: its papers, its truth, and how it is read. */
export type Loop = {
  design: Design;
  plan: Plan;
  rigPlay: number;
  /** True distance minus what the reference shows: a shift, and a part of the distance. */
  reference: { shift: number; scale: number; unitFactor: number };
  sensor: Sensor;
  noise: Noise;
  wire: Wire;
  controller: Controller;
  output: SwitchedOutput | null;
};

/** One row of the table of readings, as numbers; nothing where it was not read. */
export type ReadingRow = {
  cycle: number;
  direction: "rising" | "falling";
  /** Nominal position, millimetres. */
  point: number;
  /** As the reference showed it, millimetres. */
  reference: number;
  signal: number | null;
  card: number | null;
  counts: number | null;
  value: number | null;
  minutes: number;
};

export type TripRow = { cycle: number; direction: "approach" | "recede"; reference: number };

/** Something done to a loop, of a size in tolerances. */
export type Change = (loop: Loop, size: number, random: Random) => void;

export const spanOf = ({ range }: Design): number => range.upper - range.lower;
export const signalSpanOf = ({ signal }: Design): number => signal.upper - signal.lower;
/** Signal that a length of the range takes. */
export const signalOfLength = (design: Design, millimetres: number): number =>
  (millimetres / spanOf(design)) * signalSpanOf(design);
