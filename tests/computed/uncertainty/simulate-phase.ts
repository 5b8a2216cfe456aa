import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { loopOf } from "../../../src/analysis/readings/loop.ts";
import type { MeasuredPhase } from "../../../src/assembly/assemble-overall.ts";
import { assemblePhase } from "../../../src/assembly/phase/assemble-phase.ts";
import type { Reading, Standard } from "../../../src/model/calibration.ts";
import type { Instrument } from "../../../src/model/instrument.ts";
import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import type { Random } from "../loops/random.ts";
import type { Design } from "./designs.ts";

/** A simulated phase, and the error that the sensor truly has at a distance, in millimetres. */
export type Simulated = { phase: MeasuredPhase; trueError: (distance: number) => number };

/** What an error may be, either way, where nothing else is given; millimetres. */
export const usualTolerance = 5;
const [lower, upper, millimetresPerMilliamp] = [200, 2200, 125];

export function instrumentOf(tolerance: number): Instrument {
  return {
    ...{ tag: "S-1", rangeLower: lower, rangeUpper: upper, distanceUnit: "mm", principle: "laser" },
    ...{ signalLower: 4, signalUpper: 20, signalUnit: "mA", tolerance, toleranceBasis: "distance" },
  };
}

/** U = a + b·L of the rail, a + b·I of the meter, k = 2; b in percent. */
const rail = { a: 0.6, b: 0.01, step: 0.1 };
const meter = { a: 0.004, b: 0.01 };
/** Standard deviation of one reading, in the middle of the range where it grows; of a cycle; of a step of a walk. */
const usualNoise = 1;
const cycleDeviation = 1;
const walkStep = 0.5;

/** Farthest that the zero is off; millimetres. */
const usualZero = 2;
const simpleAcceptance: DecisionRule = { name: "simple acceptance", guardFactor: 0 };

/** What a simulation may choose; distances in millimetres. */
export type Given = {
  /** How far the zero may be drawn. */
  furthestZero?: number;
  /** What the sensor truly does, in place of what is drawn: its zero, and its gain as a part. */
  truth?: { zero: number; gain: number };
  rule?: DecisionRule;
  tolerance?: number;
  /** Standard deviation of one reading. */
  noise?: number;
  /** Only outwards, or out and back. */
  directions?: "out" | "both";
};

/**
 * One phase of a straight sensor, read through standards whose errors are drawn from their own certificates, and what the
 * program makes of it. The readings come from this file alone; nothing of the program's arithmetic makes them.
 */
export function simulatePhase({ disturbance, cycles, points }: Design, random: Random, given: Given = {}): Simulated {
  const { furthestZero = usualZero, truth, noise = usualNoise, directions = "both" } = given;
  const isCoarse = disturbance === "coarse display";
  const step = isCoarse ? 0.01 : 0.001;
  const drawnTruth = { zero: random.between(-furthestZero, furthestZero), gain: random.between(-1e-3, 1e-3) };
  const { zero, gain } = truth ?? drawnTruth;
  const trueError = (distance: number) => zero + gain * (distance - lower);
  const railOff = drawn(rail, random);
  const meterOff = drawn(meter, random);
  let walk = 0;
  const readings = Array.from({ length: cycles }, (_, cycle) => {
    const ofCycle = disturbance === "cycle effect" ? random.normal(cycleDeviation) : 0;
    const out = Array.from({ length: points }, (_, place) => lower + (place * (upper - lower)) / (points - 1));
    const back = directions === "out" ? [] : out.toReversed();
    const places = [...out.map((at) => [at, "rising"] as const), ...back.map((at) => [at, "falling"] as const)];
    return places.map(([at, direction]): Reading => {
      if (disturbance === "random walk") walk += random.normal(walkStep);
      const reference = Number(at.toFixed(1));
      const distance = reference + railOff(reference) + random.between(-rail.step / 2, rail.step / 2);
      const growth = disturbance === "growing noise" ? 0.2 + (1.6 * (at - lower)) / (upper - lower) : 1;
      const deviation = walk + ofCycle + random.normal(isCoarse ? 0.1 : noise * growth);
      const current = 4 + (distance + trueError(distance) + deviation - lower) / millimetresPerMilliamp;
      const signal = Number((Math.round((current + meterOff(current)) / step) * step).toFixed(3));
      return { calibration: "C-1", phase: "as_found", cycle: cycle + 1, direction, point: at, reference, signal };
    });
  }).flat();
  return { phase: recorded(readings, step, given), trueError };
}

/** An error of a standard: a constant part and a scale, correlated as the certificate adds them up. */
function drawn({ a, b }: { a: number; b: number }, random: Random): (measured: number) => number {
  const part = random.normal(1);
  return (measured) => (part * (a + (b / 100) * measured)) / 2;
}

function recorded(
  readings: readonly Reading[],
  step: number,
  { rule = simpleAcceptance, tolerance = usualTolerance }: Given,
): MeasuredPhase {
  const instrument = instrumentOf(tolerance);
  const stated = {
    certificate: "EX-1",
    calibratedOn: "2026-01-14",
    dueOn: "2027-01-14",
    coverageFactor: 2,
    driftPerYear: 0,
  };
  const standards: Standard[] = [
    {
      ...stated,
      standard: "A",
      expandedUncertainty: rail.a,
      relativeUncertainty: rail.b,
      uncertaintyUnit: "mm",
      resolution: rail.step,
    },
    {
      ...stated,
      standard: "B",
      expandedUncertainty: meter.a,
      relativeUncertainty: meter.b,
      uncertaintyUnit: "mA",
      resolution: step,
    },
  ];
  const decimals = step === 0.01 ? 2 : 3;
  const phase = assemblePhase(
    readings.map((row, index) => ({
      ...{ row, file: "readings.csv", line: index + 2 },
      cells: { reference: row.reference.toFixed(1), signal: (row.signal as number).toFixed(decimals) },
    })),
    {
      ...{ loop: loopOf(instrument), instrument, standards, markOf: () => "point" },
      calibration: { calibration: "C-1", tag: "S-1", performedOn: "2026-03-04", alignmentAngle: 0 },
      rule,
    },
  );
  if (!isDetermined(phase)) throw new Error(phase.notDetermined);
  return phase;
}
