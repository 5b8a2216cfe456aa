import type { Controller, Design, Loop, Plan, Sensor } from "./loop.ts";
import { signalSpanOf, spanOf } from "./loop.ts";
import type { Random } from "./random.ts";

/** What a fault needs of a loop, so that it can be there and be seen at all. */
export type Needs = {
  signals?: readonly SignalName[];
  principle?: string;
  /** The least that its pattern shows in. */
  points?: number;
  cycles?: number;
  isBothWays?: true;
  reads?: Partial<Plan["reads"]>;
  meterAt?: Plan["meterAt"];
  /** Its own fault, told by the papers: these are then written down. */
  isAirStated?: boolean;
  countsFromZero?: true;
  isRising?: true;
};

type SignalName = keyof typeof signals;
const signals = {
  "4-20 mA": { lower: 4, upper: 20, unit: "mA", rails: { low: 3.8, high: 20.5 } },
  "0-20 mA": { lower: 0, upper: 20, unit: "mA", rails: { low: 0, high: 20.5 } },
  "0-10 V": { lower: 0, upper: 10, unit: "V", rails: { low: 0, high: 10.3 } },
  "1-5 V": { lower: 1, upper: 5, unit: "V", rails: { low: 0.95, high: 5.1 } },
} as const;

const units = {
  mm: { perUnit: 1, lowers: [20, 50, 100, 200, 300], spans: [100, 200, 500, 1000, 2000, 3000] },
  cm: { perUnit: 10, lowers: [5, 10, 20, 50], spans: [50, 100, 200, 400] },
  m: { perUnit: 1000, lowers: [0.2, 0.5, 1], spans: [1, 2, 5, 10] },
  in: { perUnit: 25.4, lowers: [2, 4, 10], spans: [10, 20, 40, 100] },
  ft: { perUnit: 304.8, lowers: [0.5, 1, 2], spans: [2, 5, 10, 25] },
} as const;

const principles = ["ultrasonic", "photoelectric", "laser", "radar", "other"] as const;
const countRanges = [
  { lower: 0, upper: 27648 },
  { lower: 0, upper: 32000 },
  { lower: 6400, upper: 32000 },
  { lower: 0, upper: 4000 },
] as const;

/** A healthy loop: its own errors stay under a quarter of the tolerance, and chance well under it. */
export function drawLoop(random: Random, needs: Needs): Loop {
  const { design, rails } = drawDesign(random, needs);
  const plan = drawPlan(random, design, needs);
  const { tolerance } = design;
  const loop: Loop = {
    design,
    plan,
    rigPlay: 0,
    reference: {
      shift: random.normal(plan.referenceUncertainty / 4),
      scale: random.normal(plan.referenceUncertainty / 4) / design.range.upper,
      unitFactor: 1,
    },
    sensor: { ...healthySensor(random, design), rails, axisAngle: random.between(0, 0.5) },
    noise: drawNoise(random, tolerance),
    wire: {
      leakOhms: Number.POSITIVE_INFINITY,
      supplyVolts: 24,
      loopOhms: 300,
      limit: Number.POSITIVE_INFINITY,
      overload: 1,
      shunt: 1,
      cardOffset: 0,
      isOpen: false,
    },
    controller: healthyController(design),
    output: null,
  };
  return loop;
}

function drawDesign(random: Random, needs: Needs): { design: Design; rails: Sensor["rails"] } {
  const { rails, unit: signalUnit, ...ends } = signals[random.pick(needs.signals ?? allSignals)];
  const unit = random.pick(["mm", "mm", "mm", "cm", "m", "in", "ft"] as const);
  const { perUnit, lowers, spans } = units[unit];
  const lower = random.pick<number>(lowers) * perUnit;
  const span = random.pick<number>(spans) * perUnit;
  const isReverse = needs.isRising === undefined && random.isTrue(0.1);
  const signal = isReverse ? { lower: ends.upper, upper: ends.lower } : { lower: ends.lower, upper: ends.upper };
  const range = { lower, upper: lower + span };
  const design: Design = {
    principle: needs.principle ?? random.pick(principles),
    range,
    unit,
    millimetresPerUnit: perUnit,
    signal: { ...signal, unit: signalUnit },
    counts: random.pick(needs.countsFromZero ? countRanges.filter(({ lower: from }) => from === 0) : countRanges),
    value: drawValue(random, range, unit, perUnit),
    tolerance: random.pick([0.2, 0.25, 0.5, 0.5, 1, 1, 2]) * (span / 100),
    toleranceBasis: random.pick(["percent of span", "percent of span", "distance", "signal"] as const),
  };
  return { design, rails };
}

const allSignals = ["4-20 mA", "4-20 mA", "4-20 mA", "0-20 mA", "0-10 V", "1-5 V"] as const;

function drawValue(random: Random, { lower, upper }: Design["range"], unit: string, perUnit: number): Design["value"] {
  const height = (1.1 * upper) / perUnit;
  return random.pick([
    { lower: 0, upper: 100, unit: "%" },
    { lower: lower / perUnit, upper: upper / perUnit, unit },
    { lower: lower / perUnit, upper: upper / perUnit, unit },
    { lower: height - lower / perUnit, upper: height - upper / perUnit, unit },
  ]);
}

function drawPlan(random: Random, design: Design, needs: Needs): Plan {
  const { tolerance, range, millimetresPerUnit } = design;
  const count = Math.max(random.pick([3, 5, 5, 5, 6, 7, 9, 11, 11, 21]), needs.points ?? 3);
  const cycles = Math.max(random.pick([1, 1, 2, 3, 3, 3, 5, 10]), needs.cycles ?? 1);
  const stepPart = random.pick([0.02, 0.05, 0.1, 0.1, 0.3]);
  const reads = { ...random.pick(usualReads), ...needs.reads };
  const air = random.between(5, 35);
  return {
    points: Array.from({ length: count }, (_, index) => range.lower + (spanOf(design) * index) / (count - 1)),
    cycles: count === 21 ? Math.min(cycles, 5) : cycles,
    isBothWays: needs.isBothWays ?? random.isTrue(0.7),
    reads,
    meterAt: needs.meterAt ?? random.pick(["sensor", "card"] as const),
    hasPointColumn: random.isTrue(0.8),
    decimals: {
      reference: decimalsFor((tolerance * 0.05) / millimetresPerUnit),
      signal: decimalsFor((tolerance * stepPart * Math.abs(signalSpanOf(design))) / spanOf(design)),
      value: decimalsFor((tolerance * stepPart * Math.abs(design.value.upper - design.value.lower)) / spanOf(design)),
    },
    referenceUncertainty: tolerance * random.between(0.05, 0.15),
    meterUncertainty: (tolerance * random.between(0.02, 0.06) * Math.abs(signalSpanOf(design))) / spanOf(design),
    minutesBetween: random.pick([1, 2]),
    air:
      design.principle === "ultrasonic"
        ? {
            now: air,
            humidity: random.whole(35, 65),
            taught: needs.isAirStated === undefined ? air : 20,
            isStated: needs.isAirStated ?? random.isTrue(0.5),
            isCompensated: needs.isAirStated === undefined && random.isTrue(0.5),
          }
        : null,
    statedTilt: random.isTrue(0.3) ? 0.5 : null,
  };
}

const usualReads = [
  { signal: true, card: false, counts: false, value: false },
  { signal: true, card: false, counts: false, value: false },
  { signal: true, card: false, counts: false, value: true },
  { signal: true, card: false, counts: true, value: true },
  { signal: true, card: true, counts: true, value: true },
  { signal: true, card: false, counts: true, value: false },
] as const;

/** Decimals of the coarsest decade that still shows a step. */
function decimalsFor(step: number): number {
  return Math.min(Math.max(Math.ceil(-Math.log10(step)), 0), 6);
}

function healthySensor(random: Random, design: Design): Omit<Sensor, "rails"> {
  const small = () => random.between(-0.1, 0.1) * design.tolerance;
  return {
    datumShift: small(),
    taught: { lower: design.range.lower, upper: design.range.upper + small() },
    bow: small() / 2,
    bowShape: "bow",
    hysteresis: Math.abs(small()) / 2,
    lag: 0,
    warmUp: 0,
    warmUpMinutes: 1,
    airFactor: 1,
    axisAngle: 0,
    blindTo: 0,
    blindWay: "flat",
    obstructionAt: Number.POSITIVE_INFINITY,
    lostBeyond: Number.POSITIVE_INFINITY,
    lostChance: 0,
    lostWay: "low",
  };
}

function drawNoise(random: Random, tolerance: number): Loop["noise"] {
  const white = tolerance * random.between(0.01, 0.12);
  const kind = random.pick(["white", "white", "growing", "cycle", "walk"] as const);
  return {
    white,
    whiteAtEnd: kind === "growing" ? white + tolerance * random.between(0.02, 0.08) : white,
    cycle: kind === "cycle" ? tolerance * random.between(0.02, 0.1) : 0,
    walk: kind === "walk" ? tolerance * random.between(0.003, 0.012) : 0,
  };
}

function healthyController(design: Design): Controller {
  const { lower, upper } = design.signal;
  return {
    cardSignal: { lower, upper },
    cardOffset: 0,
    cardGain: 1,
    stuckAt: null,
    isCrossed: false,
    counts: { ...design.counts },
    value: { lower: design.value.lower, upper: design.value.upper },
    factor: 1,
    clampLow: Number.NEGATIVE_INFINITY,
    clampHigh: Number.POSITIVE_INFINITY,
    grid: 0,
  };
}
