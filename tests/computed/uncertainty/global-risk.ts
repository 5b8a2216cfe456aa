import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { falseAcceptOf } from "../../../src/verdict/decision/false-accept-of.ts";
import { randomFrom } from "../loops/random.ts";
import type { Design } from "./designs.ts";
import { meanOf, type Share, shareOf } from "./shares.ts";
import { instrumentOf, type Simulated, simulatePhase } from "./simulate-phase.ts";

/** Loops of one kind, and how they are judged; distances in millimetres. */
export type Population = {
  rule: DecisionRule;
  disturbance: Design["disturbance"];
  cycles: number;
  noise: number;
  tolerance: number;
  /** Standard deviation of the true errors, part of the tolerance. */
  spread: number;
};

/** What a rule did to many loops, and what it is said to do. */
export type GlobalRisk = Population & {
  /** Mean of the tolerance over U. */
  ratio: number;
  passed: Share;
  /** Passed, though the true error is outside; not passed, though it is inside. */
  falseAccept: Share;
  falseReject: Share;
  /** The mean of what some of the records say, given the rate that was found; parts of all loops. */
  statedFalseAccept: number;
  statedFalseReject: number;
};

/** What a record says of all loops hangs on its own U and on the rate: the mean over this part is known well enough. */
const partAsked = 1 / 20;

/**
 * Loops whose zero is drawn from a normal distribution about the middle of the tolerance, calibrated and judged each; and
 * what falseAcceptOf says of such loops when it is told how many were found in tolerance, or are known to be. The rule is applied here anew, to
 * each reading or to the mean of each direction, by the readings and limits of the record.
 */
export function globalRisk(population: Population, records: number, firstSeed: number, knownRate?: number): GlobalRisk {
  const { rule, disturbance, cycles, noise, tolerance, spread } = population;
  const design = { disturbance, cycles, points: 5 };
  const all = Array.from({ length: records }, (_, index) => {
    const random = randomFrom(firstSeed + index);
    const zero = random.normal(spread * tolerance);
    const { phase } = simulatePhase(design, random, { truth: { zero, gain: 0 }, rule, noise, tolerance });
    const kept = index < Math.max(1, partAsked * records) ? phase : undefined;
    const ratio = tolerance / meanOf(phase.points.map(({ expandedUncertainty }) => expandedUncertainty));
    const isInside = Math.abs(zero) <= tolerance;
    return { kept, ratio, isInside, isPassed: isPassed(phase, population), isFound: isFound(phase, population) };
  });
  const inToleranceRate = knownRate ?? (100 * all.filter((one) => one.isFound).length) / records;
  const told = all.flatMap(({ kept }) =>
    kept === undefined ? [] : (falseAcceptOf({ ...instrumentOf(tolerance), inToleranceRate }, kept, rule) ?? []),
  );
  if (told.length === 0) throw new Error(`nothing is said of loops judged by ${rule.name}`);
  return {
    ...population,
    ratio: meanOf(all.map(({ ratio }) => ratio)),
    passed: shareOf(all, (one) => one.isPassed),
    falseAccept: shareOf(all, (one) => one.isPassed && !one.isInside),
    falseReject: shareOf(all, (one) => one.isInside && !one.isPassed),
    statedFalseAccept: meanOf(told.map(({ falseAccept }) => falseAccept)),
    statedFalseReject: meanOf(told.map(({ falseReject }) => falseReject)),
  };
}

type Phase = Simulated["phase"];

/** Simple acceptance takes every reading, the others the mean of each direction, drawn in by their guard band. */
function isPassed(phase: Phase, { rule, tolerance }: Population): boolean {
  if (rule.name === "simple acceptance") return areReadingsWithin(phase, tolerance);
  return areMeansWithin(phase, (point) => {
    if (rule.name === "managed guard band") return tolerance - point.guardBand;
    return tolerance - rule.guardFactor * point.expandedUncertainty;
  });
}

/** In tolerance, as an owner counts loops: a pass; of a rule of more words also a conditional one. */
function isFound(phase: Phase, population: Population): boolean {
  const { rule, tolerance } = population;
  return rule.name === "non-binary guard band" ? areMeansWithin(phase, () => tolerance) : isPassed(phase, population);
}

function areReadingsWithin({ readings }: Phase, tolerance: number): boolean {
  return readings.every(({ errorDistance = 0 }) => Math.abs(errorDistance) <= tolerance);
}

function areMeansWithin({ points, readings }: Phase, limitAt: (point: Phase["points"][number]) => number): boolean {
  return points.every((at) =>
    (["rising", "falling"] as const).every((way) => {
      const own = readings.filter(({ point, direction }) => point === at.point && direction === way);
      return Math.abs(meanOf(own.map(({ errorDistance = 0 }) => errorDistance))) <= limitAt(at);
    }),
  );
}

const guard = (name: Exclude<DecisionRule["name"], "simple acceptance">, guardFactor: number) => ({
  name,
  guardFactor,
});

/**
 * Of each rule, at tolerances of one to three U, where enough loops are rejected, and some accepted, wrongly to be counted. Simple
 * acceptance takes quiet readings, for it judges each of them, and noise would let none pass.
 */
export const populations: readonly Population[] = [
  ...[
    { rule: { name: "simple acceptance", guardFactor: 0 } as const, noise: 0.1, tolerance: 1.06 },
    ...[
      guard("guard band", 0),
      guard("guard band", 0.5),
      guard("non-binary guard band", 1),
      guard("managed guard band", 1),
    ].map((rule) => ({ rule, noise: 1, tolerance: 2 })),
    { rule: guard("guard band", 1), noise: 1, tolerance: 4 },
  ].map((one) => ({ ...one, disturbance: "white noise" as const, cycles: 5, spread: 0.7 })),
  ...[guard("guard band", 0), guard("guard band", 1)].map((rule) => {
    return { rule, noise: 1, tolerance: 3, disturbance: "cycle effect" as const, cycles: 5, spread: 0.7 };
  }),
];
