import type { DecisionRule } from "../../../src/verdict/decision/decision-rule.ts";
import { falseAcceptOf } from "../../../src/verdict/decision/false-accept-of.ts";
import { randomFrom } from "../loops/random.ts";
import type { Design } from "./designs.ts";
import { instrument, type Simulated, simulatePhase, tolerance } from "./simulate-phase.ts";

/** What a rule did to many loops, and what it is said to do; parts of all loops. */
export type GlobalRisk = {
  rule: DecisionRule;
  disturbance: Design["disturbance"];
  cycles: number;
  /** Standard deviation of the true errors, part of the tolerance. */
  spread: number;
  records: number;
  /** Passed. */
  found: number;
  /** Passed, though the true error is outside; not passed, though it is inside. */
  falseAccept: number;
  falseReject: number;
  /** The mean of what the records say that say anything, given the rate that was found. */
  statedFalseAccept: number;
  statedFalseReject: number;
};

export type Population = Pick<GlobalRisk, "rule" | "disturbance" | "cycles" | "spread">;

/**
 * Loops whose zero is drawn from a normal distribution about the middle of the tolerance, calibrated and judged each; and
 * what falseAcceptOf says of such loops when it is told how many were found in tolerance. The rule is applied here anew, to
 * each reading or to the mean of each direction, by the readings and limits of the record.
 */
export function globalRisk(
  { rule, disturbance, cycles, spread }: Population,
  records: number,
  firstSeed: number,
): GlobalRisk {
  const design = { disturbance, cycles, points: 5 };
  const all = Array.from({ length: records }, (_, index) => {
    const random = randomFrom(firstSeed + index);
    const zero = random.normal(spread * tolerance);
    const { phase } = simulatePhase(design, random, { truth: { zero, gain: 0 }, rule });
    return { phase, isInside: Math.abs(zero) <= tolerance, isPassed: isPassed(phase, rule) };
  });
  const found = part(all, ({ isPassed }) => isPassed);
  const told = all.map(({ phase }) => falseAcceptOf({ ...instrument, inToleranceRate: 100 * found }, phase, rule));
  const meanOf = (which: "falseAccept" | "falseReject") => {
    const said = told.flatMap((one) => (one === undefined ? [] : [one[which]]));
    return said.reduce((sum, one) => sum + one, 0) / said.length;
  };
  return {
    ...{ rule, disturbance, cycles, spread, records, found },
    falseAccept: part(all, ({ isInside, isPassed }) => isPassed && !isInside),
    falseReject: part(all, ({ isInside, isPassed }) => isInside && !isPassed),
    statedFalseAccept: meanOf("falseAccept"),
    statedFalseReject: meanOf("falseReject"),
  };
}

/** Simple acceptance takes every reading, a guard band the mean of each direction, drawn in by a part of U. */
function isPassed({ points, readings }: Simulated["phase"], { name, guardFactor }: DecisionRule): boolean {
  if (name === "simple acceptance")
    return readings.every(({ errorDistance = 0 }) => Math.abs(errorDistance) <= tolerance);
  return points.every(({ expandedUncertainty, point }) =>
    (["rising", "falling"] as const).every((way) => {
      const errors = readings.flatMap((one) =>
        one.point === point && one.direction === way ? [one.errorDistance ?? 0] : [],
      );
      const error = errors.reduce((sum, one) => sum + one, 0) / errors.length;
      return Math.abs(error) <= tolerance - guardFactor * expandedUncertainty;
    }),
  );
}

function part<Item>(items: readonly Item[], isSo: (item: Item) => boolean): number {
  return items.filter(isSo).length / items.length;
}

/** Of each rule, with and without a cycle effect; a guard band of no part of U judges the means by the tolerance itself. */
export const populations: readonly Population[] = (["white noise", "cycle effect"] as const).flatMap((disturbance) =>
  [
    { name: "simple acceptance", guardFactor: 0 } as const,
    { name: "guard band", guardFactor: 0 } as const,
    { name: "guard band", guardFactor: 1 } as const,
  ].map((rule) => ({ disturbance, cycles: 3, spread: 0.5, rule })),
);
