import { leastOf } from "./least-and-greatest.ts";
import { normalCumulative } from "./normal-distribution.ts";
import { type ChangingHeight, type NormalRule, normalRule, overNormal } from "./over-normal.ts";

/** A result that deviates, and the limits of its deviation; all in one unit. */
export type DeviatingResult = {
  low: number;
  high: number;
  /** Standard deviation of what all results share, fully correlated; >= 0. */
  common: number;
  /** Of what the results of a group share; 0 where it is left out. */
  group?: number;
  /** Of the result alone; >= 0. */
  own: number;
  /** How many such results a group has; need not be whole. */
  count: number;
};

/** How many groups there are; standard deviations beyond which a result counts as surely inside or outside. */
type Sharing = { groups?: number; sure?: number };

/** Beyond it lies 1e-18 of a normal distribution. */
const farthestReach = 8.75;
/** Steps over what is shared, in standard deviations of it. */
const [finestStep, coarsestStep] = [1 / 2000, 0.5];
/** A step over the least standard deviation of what is not shared. */
const stepOfRest = 0.5;
/** A result without a deviation of its own counts as one of this part of what it shares. */
const leastOwn = 1e-3;

/**
 * The chance that at least one of several results lies outside its limits, where they deviate together and each alone.
 *
 * 1 − ∫ φ(c) · [∫ φ(g) · Π (1 − p(c, g)) dg]^groups dc, p the chance of one result given what it shares: for groups of
 * one and one result 1 − [Φ(high/s) − Φ(low/s)] with s² = common² + group² + own². By the trapezoid rule, whose error
 * falls as e^(−2π²·(own/shared)²/step²) for a smooth integrand.
 *
 * @param results one or more; limits and standard deviations in one unit
 * @param sharing groups alike (1 where it is left out); where a result is sure, what it is need not be worked out
 * @returns probability, 0 to 1; about 9 digits, and 3 where own is under a thousandth of what is shared; where `sure` is
 *   given, within about 2·Φ(−sure) for each result
 * Faults: `RangeError` where nothing deviates.
 * Source: JCGM 106:2012, 9.5.2, for conditional independence given the true value; P. J. Davis, P. Rabinowitz, Methods of
 *   Numerical Integration (1984), 2.9, for the rule.
 * @example chanceOutside([{ low: -2, high: 2, common: 0, own: 1, count: 2 }]) // 0.08893 = 1 − 0.9545²
 */
export function chanceOutside(results: readonly DeviatingResult[], sharing: Sharing = {}): number {
  return chancesOutside(results, sharing)(0);
}

/**
 * The same for results that are all shifted by as much, as a function of the shift.
 *
 * @param results as of `chanceOutside`
 * @param sharing as of `chanceOutside`
 * @returns from what is added to every result, in their unit, to the chance
 * Faults: `RangeError` where nothing deviates.
 * Source: as `chanceOutside`.
 * @example chancesOutside([{ low: -2, high: 2, common: 0, own: 1, count: 1 }])(2) // 0.5000 and 3e-5
 */
export function chancesOutside(
  results: readonly DeviatingResult[],
  { groups = 1, sure = 1000 }: Sharing = {},
): (shift: number) => number {
  if (results.some(({ common, group = 0, own }) => !(Math.hypot(common, group, own) > 0)))
    throw new RangeError("a result does not deviate, so there is no chance");
  const [only] = results;
  if (results.length === 1 && only && only.count * groups === 1) {
    return (shift) => outsideOf(only, shift, Math.hypot(only.common, only.group ?? 0, only.own), sure);
  }
  const ofCycle = results.map((one) => ({ ...one, shared: one.group ?? 0, rest: ownOf(one) }));
  const ofAll = ofCycle.map((one) => ({ ...one, shared: one.common, rest: Math.hypot(one.rest, one.shared) }));
  const rules = { cycle: ruleOver(ofCycle, sure), all: ruleOver(ofAll, sure) };
  const outsideInCycle = (shifts: readonly number[]) =>
    overNormal(rules.cycle, changing(ofCycle, shifts, sure), (deviations) =>
      anyOutside(ofCycle, shifts, deviations, sure),
    );
  return (shift) => {
    const outsideAt = (deviations: number) => {
      const ofOne = outsideInCycle(ofAll.map(({ shared }) => shift + deviations * shared));
      return -Math.expm1(groups * Math.log1p(-Math.min(1, ofOne)));
    };
    const shifts = ofAll.map(() => shift);
    return overNormal(rules.all, changing(ofAll, shifts, sure), outsideAt);
  };
}

/** A result, what it shares with others, and the standard deviation that is left of it. */
type Shared = DeviatingResult & { shared: number; rest: number };

/** One place where nothing is shared. */
function ruleOver(results: readonly Shared[], sure: number): NormalRule {
  const ratios = results.flatMap(({ rest, shared }) => (shared > 0 ? [rest / shared] : []));
  if (ratios.length === 0) return normalRule(1, 0);
  const step = Math.min(coarsestStep, Math.max(finestStep, leastOf(ratios) * stepOfRest));
  return normalRule(step, Math.min(sure, farthestReach));
}

/** Where, in deviations of what is shared, one result is surely outside, and where all are surely inside. */
function changing(results: readonly Shared[], shifts: readonly number[], sure: number): ChangingHeight {
  const found = { from: -Infinity, insideFrom: -Infinity, insideTo: Infinity, to: Infinity };
  for (const [index, { low, high, shared, rest }] of results.entries()) {
    const [shift, margin] = [shifts[index] as number, sure * rest];
    found.from = Math.max(found.from, parted(low - shift - margin, shared));
    found.insideFrom = Math.max(found.insideFrom, parted(low - shift + margin, shared));
    found.insideTo = Math.min(found.insideTo, parted(high - shift - margin, shared));
    found.to = Math.min(found.to, parted(high - shift + margin, shared));
  }
  return found;
}

/** Where nothing is shared, no deviation of it reaches a place. */
function parted(distance: number, shared: number): number {
  return shared > 0 ? distance / shared : distance >= 0 ? Infinity : -Infinity;
}

function anyOutside(results: readonly Shared[], shifts: readonly number[], deviations: number, sure: number): number {
  let sum = 0;
  for (let index = 0; index < results.length; index++) {
    const result = results[index] as Shared;
    const outside = outsideOf(result, (shifts[index] as number) + deviations * result.shared, result.rest, sure);
    if (outside > 0) sum += result.count * Math.log1p(-Math.min(1, outside));
    if (sum < -50) return 1;
  }
  return -Math.expm1(sum);
}

/** Reckoned as the sum of the two tails, so that a small chance keeps its digits. */
function outsideOf({ low, high }: DeviatingResult, shared: number, own: number, sure: number): number {
  const [above, below] = [(shared - high) / own, (low - shared) / own];
  return (above < -sure ? 0 : normalCumulative(above)) + (below < -sure ? 0 : normalCumulative(below));
}

function ownOf({ common, group = 0, own }: DeviatingResult): number {
  return Math.max(own, leastOwn * Math.hypot(common, group));
}
