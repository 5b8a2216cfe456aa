import { studentTQuantile } from "../../numeric/student-t-quantile.ts";
import { trapezoidalCoverageFactor } from "../../numeric/trapezoidal-coverage-factor.ts";
import type { Contribution } from "./contribution.ts";

export { type Contribution, contribution, type Distribution } from "./contribution.ts";

/** What the coverage factor of a budget rests on. */
type CoverageBasis =
  | "Student t"
  | "normal"
  | "one dominant rectangular contribution"
  | "two dominant rectangular contributions";

/** A coverage factor, with the share of values that it is meant to cover. */
type Coverage = { coverageFactor: number; coverageProbability: number; coverageBasis: CoverageBasis };

/** One line of a budget; share is its part of the variance, 0 to 1. */
export type BudgetLine = Contribution & { share: number };

/** An uncertainty budget; uncertainties in distance, degrees of freedom not truncated, Infinity where none is limited. */
export type Budget = Coverage & {
  lines: readonly BudgetLine[];
  combinedUncertainty: number;
  effectiveDegreesOfFreedom: number;
  expandedUncertainty: number;
};

/** Coverage probability of U for a normal or t-distributed error: EA-4/02 M:2022, clause 6; GUM table G.2. */
const normalCoverage = 0.9545;
/** Coverage probability where the shape is rectangular or trapezoidal: EA-4/02 M:2022, S9 and S10. */
const rectangularCoverage = 0.95;
/** Greatest rest, as part of the one dominant contribution: EA-4/02 M:2022, S9.14. */
const greatestRestOfOne = 0.3;
/** Greatest rest, as part of the two dominant ones combined: own choice, so that EA-4/02 S11 (0.34) is of this kind. */
const greatestRestOfTwo = 0.35;
/** Degrees of freedom above which k is that of the normal distribution: own choice, k differs by under 0.013 %. */
const normalFrom = 1e4;

/**
 * Combines the contributions to the uncertainty of an error into one expanded uncertainty.
 *
 * u = √(Σ u_i²). ν = u⁴ / Σ(u_i⁴ / ν_i), reckoned with unrounded u. U = k·u, where k is, in this order:
 * 0.95·√3, where one rectangular contribution dominates (all others combined <= 0.3 of it);
 * that of a trapezoid at 95 %, where two of them do (all others combined <= 0.35 of the two and <= the lesser of them);
 * the normal quantile at 95.45 %, where ν > 10⁴; otherwise Student's t at 95.45 % and ν truncated to a whole number.
 * Only rectangular contributions of unlimited degrees of freedom count as dominant (own choice): a half-width that is
 * itself a guess does not earn a smaller k. At these bounds, with a normal rest, the stated 95 % is truly 92.7 % for one
 * and 94.2 % for two; where all others are 0.1 of the one, 94.8 %.
 *
 * @param contributions one or more, all in one unit of distance, none correlated with another; zeros allowed
 * @returns lines in the order given, u, ν, k, its probability and basis, and U in distance; none of them rounded
 * Faults: `RangeError` for an empty budget, one that is all zero, or a contribution that is negative, not finite, or of
 * fewer than 1 degree of freedom.
 * Source: JCGM 100:2008, 5.1.2 equation (10); G.4.1 equation (G.2b), which allows truncation to the next lower whole
 * number: it is what annex H.1 and EA-4/02 M:2022, S12 do, and never gives the smaller k. EA-4/02 S9.14, S10.13, S11.
 * @example combineBudget([contribution({ source: "standard", value: 0.2, unit: "mm", distribution: "normal", divisor: 2 }),
 *   contribution({ source: "scatter", value: 0.1, unit: "mm", distribution: "normal", divisor: 1, degreesOfFreedom: 4 })])
 *   // combinedUncertainty 0.1414, effectiveDegreesOfFreedom 16, coverageFactor 2.169, expandedUncertainty 0.3067
 */
export function combineBudget(contributions: readonly Contribution[]): Budget {
  for (const line of contributions) requireLine(line);
  const combinedUncertainty = rootSumOfSquares(contributions);
  if (combinedUncertainty === 0) throw new RangeError("no contribution is above zero, so there is no uncertainty");
  const effectiveDegreesOfFreedom = welchSatterthwaite(contributions, combinedUncertainty);
  const coverage = coverageOf(contributions, effectiveDegreesOfFreedom);
  return {
    lines: contributions.map((line) => ({ ...line, share: (line.standardUncertainty / combinedUncertainty) ** 2 })),
    combinedUncertainty,
    effectiveDegreesOfFreedom,
    ...coverage,
    expandedUncertainty: coverage.coverageFactor * combinedUncertainty,
  };
}

function requireLine({ source, standardUncertainty, degreesOfFreedom }: Contribution): void {
  if (!(standardUncertainty >= 0 && Number.isFinite(standardUncertainty)))
    throw new RangeError(`${source}: a standard uncertainty of ${standardUncertainty} is not a number >= 0`);
  if (!(degreesOfFreedom >= 1)) throw new RangeError(`${source}: ${degreesOfFreedom} degrees of freedom, at least 1`);
}

function rootSumOfSquares(contributions: readonly Contribution[]): number {
  return Math.hypot(...contributions.map(({ standardUncertainty }) => standardUncertainty));
}

function welchSatterthwaite(contributions: readonly Contribution[], combinedUncertainty: number): number {
  // Ratios first: fourth powers of small distances would leave the range of doubles.
  const sum = contributions.reduce(
    (total, line) => total + (line.standardUncertainty / combinedUncertainty) ** 4 / line.degreesOfFreedom,
    0,
  );
  return 1 / sum;
}

function coverageOf(contributions: readonly Contribution[], degreesOfFreedom: number): Coverage {
  const ordered = contributions.toSorted((left, right) => right.standardUncertainty - left.standardUncertainty);
  const dominant = ordered.filter(isSurelyRectangular).slice(0, 2);
  const [first, second] = dominant;
  if (first !== undefined && restOf(ordered, [first]) <= greatestRestOfOne * first.standardUncertainty)
    return rectangular(1, "one dominant rectangular contribution");
  if (second !== undefined && restOf(ordered, dominant) <= greatestRestBeside(dominant, second))
    return rectangular(edgeParameterOf(first!, second), "two dominant rectangular contributions");
  return normalOrStudentT(degreesOfFreedom);
}

// A second one smaller than the rest does not dominate: without this, 0.35 would take the place of 0.3.
function greatestRestBeside(dominant: readonly Contribution[], second: Contribution): number {
  return Math.min(second.standardUncertainty, greatestRestOfTwo * rootSumOfSquares(dominant));
}

function isSurelyRectangular({ distribution, degreesOfFreedom }: Contribution): boolean {
  return distribution === "rectangular" && degreesOfFreedom === Number.POSITIVE_INFINITY;
}

function restOf(contributions: readonly Contribution[], dominant: readonly Contribution[]): number {
  return rootSumOfSquares(contributions.filter((line) => !dominant.includes(line)));
}

function edgeParameterOf(wide: Contribution, narrow: Contribution): number {
  const sum = wide.standardUncertainty + narrow.standardUncertainty;
  return (wide.standardUncertainty - narrow.standardUncertainty) / sum;
}

function rectangular(edgeParameter: number, coverageBasis: CoverageBasis): Coverage {
  const coverageFactor = trapezoidalCoverageFactor(edgeParameter, rectangularCoverage);
  return { coverageFactor, coverageProbability: rectangularCoverage, coverageBasis };
}

function normalOrStudentT(degreesOfFreedom: number): Coverage {
  return {
    coverageFactor: studentTFactor(degreesOfFreedom),
    coverageProbability: normalCoverage,
    coverageBasis: degreesOfFreedom > normalFrom ? "normal" : "Student t",
  };
}

/**
 * The coverage factor at 95.45 % for effective degrees of freedom.
 *
 * @param degreesOfFreedom at least 1, not truncated; Infinity for unlimited ones
 * @returns k of Student's t at the whole number below, of the normal distribution above 10⁴
 * Faults: `RangeError` under 1.
 * Source: JCGM 100:2008, G.4.1, which allows truncation to the next lower whole number.
 * @example studentTFactor(16.9) // 2.169
 */
export function studentTFactor(degreesOfFreedom: number): number {
  // The last digit of a sum must not turn 16 degrees of freedom into 15.
  const truncated = truncatedDegrees(degreesOfFreedom);
  const counted = degreesOfFreedom > normalFrom ? Number.POSITIVE_INFINITY : truncated;
  return studentTQuantile((1 + normalCoverage) / 2, counted);
}

/**
 * Degrees of freedom as a whole number; the last digit of a sum must not turn 16 into 15.
 *
 * @param degreesOfFreedom as a sum gave them
 * @returns the whole number below or at it
 * Source: JCGM 100:2008, G.4.1: truncated to the next lower integer.
 * @example truncatedDegrees(16 - 1e-12) // 16
 */
export function truncatedDegrees(degreesOfFreedom: number): number {
  return Math.floor(degreesOfFreedom * (1 + 1e-12));
}
