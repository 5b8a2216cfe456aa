import { leastOf } from "./least-and-greatest.ts";
import { normalCumulative } from "./normal-distribution.ts";

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

/** How many groups there are, and the finest step over what is shared, in standard deviations. */
type Sharing = { groups?: number; finestStep?: number };

/** Beyond it lies 1e-18 of a normal distribution. */
const reach = 8.75;
const coarsestStep = 0.25;
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
 * @param sharing groups alike (1 where it is left out), finest step of the integral
 * @returns probability, 0 to 1; about 9 digits where own is at least twice the finest step of what is shared, else 3
 * Faults: `RangeError` where nothing deviates.
 * Source: JCGM 106:2012, 9.5.2, for conditional independence given the true value; P. J. Davis, P. Rabinowitz, Methods of
 *   Numerical Integration (1984), 2.9, for the rule.
 * @example chanceOutside([{ low: -2, high: 2, common: 0, own: 1, count: 2 }]) // 0.08893 = 1 − 0.9545²
 */
export function chanceOutside(
  results: readonly DeviatingResult[],
  { groups = 1, finestStep = 1 / 200 }: Sharing = {},
): number {
  if (results.some(({ common, group = 0, own }) => !(Math.hypot(common, group, own) > 0)))
    throw new RangeError("a result does not deviate, so there is no chance");
  const [only] = results;
  if (results.length === 1 && only && only.count * groups === 1) {
    return outsideOf(only, 0, Math.hypot(only.common, only.group ?? 0, only.own));
  }
  const steps = {
    common: stepOver(results, ({ common }) => common, finestStep),
    group: stepOver(results, ({ group = 0 }) => group, finestStep),
  };
  const ofGroup = (common: number) =>
    overNormal(steps.group, (group) => -Math.expm1(logarithmInside(results, common, group)));
  return overNormal(steps.common, (common) => -Math.expm1(groups * Math.log1p(-ofGroup(common))));
}

function logarithmInside(results: readonly DeviatingResult[], common: number, group: number): number {
  let sum = 0;
  for (const result of results) {
    const shared = common * result.common + group * (result.group ?? 0);
    sum += result.count * Math.log1p(-Math.min(1, outsideOf(result, shared, ownOf(result))));
    if (sum < -50) return Number.NEGATIVE_INFINITY;
  }
  return sum;
}

/** Reckoned as the sum of the two tails, so that a small chance keeps its digits. */
function outsideOf({ low, high }: DeviatingResult, shared: number, own: number): number {
  return normalCumulative((shared - high) / own) + normalCumulative((low - shared) / own);
}

function ownOf({ common, group = 0, own }: DeviatingResult): number {
  return Math.max(own, leastOwn * Math.hypot(common, group));
}

/** Undefined where nothing is shared. */
function stepOver(
  results: readonly DeviatingResult[],
  sharedOf: (result: DeviatingResult) => number,
  finestStep: number,
): number | undefined {
  const ratios = results.flatMap((result) => (sharedOf(result) > 0 ? [ownOf(result) / sharedOf(result)] : []));
  return ratios.length === 0 ? undefined : Math.min(coarsestStep, Math.max(finestStep, leastOf(ratios) / 2));
}

function overNormal(step: number | undefined, height: (deviations: number) => number): number {
  if (step === undefined) return height(0);
  const count = Math.ceil(reach / step);
  let [sum, weights] = [0, 0];
  for (let place = -count; place <= count; place++) {
    const weight = Math.exp(-0.5 * (place * step) ** 2);
    weights += weight;
    sum += weight * height(place * step);
  }
  return sum / weights;
}
