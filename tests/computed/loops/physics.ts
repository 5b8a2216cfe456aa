import type { Loop, Sensor } from "./loop.ts";
import { signalSpanOf, spanOf } from "./loop.ts";

/** One moment of a loop: where the target truly is, how it came there, and what chance adds. */
export type Moment = {
  distance: number;
  direction: "rising" | "falling";
  /** How far the target moved since the reading before; signed, millimetres. */
  moved: number;
  minutes: number;
  noise: number;
  isLost: boolean;
  /** Signal of the reading before, for a sensor that holds it. */
  held: number;
  /** What another channel shows, from 0 to 1. */
  other: number;
};

export type Stages = { sensor: number; card: number; counts: number; value: number };

/** Every stage of a loop at one moment, before anybody writes it down. */
export function stagesAt(loop: Loop, moment: Moment): Stages {
  const sent = signalOf(loop, moment);
  const { sensor, card } = alongWire(loop, sent);
  const counts = countsOf(loop, card, moment.other);
  return { sensor, card, counts, value: controllerValueOf(loop, counts) };
}

/** Distance that the sensor believes, millimetres. */
export function sensedDistance({ sensor, design, rigPlay }: Loop, moment: Moment): number {
  const way = moment.direction === "rising" ? 1 : -1;
  const seen = alongBeam(sensor, moment.distance + sensor.datumShift - (way * rigPlay) / 2);
  const part = (seen - design.range.lower) / spanOf(design);
  const bend = 4 * part * (1 - part);
  const curve = sensor.bowShape === "bow" ? bend : (36 / Math.sqrt(3)) * part * (part - 0.5) * (part - 1);
  return (
    seen +
    sensor.bow * curve -
    (way * sensor.hysteresis * bend) / 2 -
    sensor.lag * moment.moved +
    sensor.warmUp * Math.exp(-moment.minutes / sensor.warmUpMinutes) +
    moment.noise
  );
}

function alongBeam(sensor: Sensor, distance: number): number {
  const slanted = Math.min(distance, sensor.obstructionAt) / Math.cos((sensor.axisAngle * Math.PI) / 180);
  if (slanted >= sensor.blindTo) return slanted * sensor.airFactor;
  return (sensor.blindWay === "flat" ? sensor.blindTo : 2 * slanted) * sensor.airFactor;
}

const faultSignals = { low: 3.5, high: 21.5 } as const;

function signalOf(loop: Loop, moment: Moment): number {
  const { sensor, design } = loop;
  if (moment.isLost) return sensor.lostWay === "hold" ? moment.held : faultSignals[sensor.lostWay];
  const { taught, rails } = sensor;
  const part = (sensedDistance(loop, moment) - taught.lower) / (taught.upper - taught.lower);
  const signal = design.signal.lower + part * signalSpanOf(design);
  return Math.min(Math.max(signal, rails.low), rails.high);
}

function alongWire({ wire }: Loop, sent: number): { sensor: number; card: number } {
  if (wire.isOpen) return { sensor: 0, card: 0 };
  const sensor = Math.min(sent, wire.limit) * wire.overload;
  // Milliamps, volts, ohms: what the leak carries beside the sensor.
  const leak = (1000 * (wire.supplyVolts - (sensor / 1000) * wire.loopOhms)) / wire.leakOhms;
  return { sensor, card: sensor * wire.shunt + leak + wire.cardOffset };
}

function countsOf({ controller, design }: Loop, card: number, other: number): number {
  const { cardSignal, cardGain, cardOffset, stuckAt, isCrossed } = controller;
  const { lower, upper } = design.counts;
  if (stuckAt !== null) return stuckAt;
  if (isCrossed) return Math.round(lower + other * (upper - lower));
  const part = (card * cardGain + cardOffset - cardSignal.lower) / (cardSignal.upper - cardSignal.lower);
  return Math.min(Math.max(Math.round(lower + part * (upper - lower)), -32768), 32767);
}

function controllerValueOf({ controller }: Loop, raw: number): number {
  const { counts, value, factor, clampLow, clampHigh, grid } = controller;
  const scaled = value.lower + ((raw - counts.lower) / (counts.upper - counts.lower)) * (value.upper - value.lower);
  const clamped = Math.min(Math.max(scaled, clampLow), clampHigh);
  return (grid > 0 ? Math.floor(clamped / grid) * grid : clamped) * factor;
}

/** Distance that a stage stands for, by the papers; millimetres. */
export function indicatedBy(loop: Loop, stage: keyof Stages, shown: number): number {
  const { design } = loop;
  const ends = stage === "counts" ? design.counts : stage === "value" ? design.value : design.signal;
  return design.range.lower + ((shown - ends.lower) / (ends.upper - ends.lower)) * spanOf(design);
}
