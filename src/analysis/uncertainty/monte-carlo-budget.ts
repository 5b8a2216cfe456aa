import type { StandardShape } from "../../numeric/draw-from.ts";
import { symmetricInterval } from "../../numeric/shortest-interval.ts";
import type { Budget, BudgetLine } from "./budget.ts";
import { type MonteCarloInput, monteCarlo } from "./monte-carlo.ts";

/** A budget propagated by drawing, beside what the budget says; all in distance, about an error of 0. */
export type MonteCarloBudget = {
  draws: number;
  standardUncertainty: number;
  /** Half of the width of the shortest interval with the budget's own coverage probability. */
  halfWidth: number;
  low: number;
  high: number;
  /** What chance leaves open in `halfWidth`, one standard deviation. */
  halfWidthUncertainty: number;
  /** δ: half a unit of the second significant digit of the budget's standard uncertainty. */
  numericalTolerance: number;
  /** Whether `halfWidth` and the budget's expanded uncertainty differ by no more than δ. */
  agrees: boolean;
  /** Why not, in words; null where they agree. */
  reason: string | null;
};

/**
 * Checks a budget by drawing from its distributions, and says whether its expanded uncertainty holds.
 *
 * The error is the sum of the lines (the model is linear). A normal line of limited degrees of freedom is drawn from
 * Student's t with its standard uncertainty as scale; for other shapes degrees of freedom are not taken in (own choice).
 * Agreement: |U − half-width| <= δ, with u = c·10^l, c of two digits, and δ = 10^l / 2. All shapes are symmetric about
 * 0, so the two ends of the clause come down to one half-width, which chance moves less than either end.
 *
 * @param budget of `combineBudget`, in distance
 * @param draws >= 10⁴/(1 − p); take 10⁶, fewer cannot tell a difference of δ from chance
 * @param seed at least 16 bytes, a digest, as for `randomStream`
 * @param stream whole number >= 0; one for each budget under one seed
 * @returns standard deviation, shortest interval, and whether they agree. With 2 degrees of freedom or fewer the spread
 *   of the draws has no bound and their standard deviation means little; the half-width does
 * Faults: `RangeError` for too few draws or what `monteCarlo` refuses.
 * Source: JCGM 101:2008, 6.4.9.2 (t), 7.2.2 (draws), clause 8 (validation, δ by 7.9.2).
 * @example monteCarloBudget(combineBudget([contribution({ source: "standard", value: 2, unit: "mm", distribution:
 *   "normal", divisor: 2 })]), 1e6, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16], 0).agrees // true
 */
export function monteCarloBudget(
  budget: Budget,
  draws: number,
  seed: Uint8Array | readonly number[],
  stream: number,
): MonteCarloBudget {
  const { coverageProbability, combinedUncertainty, expandedUncertainty } = budget;
  if (!(draws >= 1e4 / (1 - coverageProbability)))
    throw new RangeError(`${draws} draws are too few for ${coverageProbability}`);
  const inputs = budget.lines.map(inputOf);
  const drawn = monteCarlo({ inputs, model: sumOf, draws, seed, stream, coverageProbability });
  const { low, high } = drawn.shortest;
  const halfWidth = (high - low) / 2;
  const numericalTolerance = numericalToleranceOf(combinedUncertainty);
  const halfWidthUncertainty = halfWidthUncertaintyOf(drawn.sorted, coverageProbability);
  const agrees = Math.abs(expandedUncertainty - halfWidth) <= numericalTolerance;
  const found = { draws, halfWidth, halfWidthUncertainty, numericalTolerance };
  const reason = agrees ? null : reasonOf(budget, found);
  return { ...found, standardUncertainty: drawn.standardDeviation, low, high, agrees, reason };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function inputOf(line: BudgetLine): MonteCarloInput {
  const { standardUncertainty } = line;
  return { ...shapeOf(line), location: 0, scale: standardUncertainty * halfWidthsPerDeviation(line) };
}

function shapeOf({ distribution, degreesOfFreedom, divisor }: BudgetLine): StandardShape {
  switch (distribution) {
    case "normal":
      return Number.isFinite(degreesOfFreedom) ? { shape: "Student t", degreesOfFreedom } : { shape: "normal" };
    case "trapezoidal":
      // A trapezoid's divisor is √(6/(1 + β²)); rounding must not carry β² below 0 or above 1.
      return { shape: "trapezoidal", edgeParameter: Math.sqrt(Math.min(1, Math.max(0, 6 / divisor ** 2 - 1))) };
    default:
      return { shape: distribution };
  }
}

// From the standard uncertainty, not the value: a rectangular line may have been stated as a standard uncertainty.
function halfWidthsPerDeviation({ distribution, divisor }: BudgetLine): number {
  switch (distribution) {
    case "normal":
      return 1;
    case "rectangular":
      return Math.sqrt(3);
    case "triangular":
      return Math.sqrt(6);
    case "arcsine":
      return Math.SQRT2;
    case "trapezoidal":
      return divisor;
  }
}

function numericalToleranceOf(standardUncertainty: number): number {
  const exponent = Number(standardUncertainty.toExponential(1).split("e")[1]);
  return 0.5 * 10 ** (exponent - 1);
}

// One standard deviation of the count inside, √(p(1 − p)/n), carried over to the half-width that has that count.
function halfWidthUncertaintyOf(sorted: Float64Array, probability: number): number {
  const deviation = Math.sqrt((probability * (1 - probability)) / sorted.length);
  const wider = symmetricInterval(sorted, probability + deviation);
  const narrower = symmetricInterval(sorted, probability - deviation);
  return (wider.high - wider.low - (narrower.high - narrower.low)) / 4;
}

type Found = Pick<MonteCarloBudget, "draws" | "halfWidth" | "halfWidthUncertainty" | "numericalTolerance">;

function reasonOf(budget: Budget, { draws, halfWidth, halfWidthUncertainty, numericalTolerance }: Found): string {
  const difference = Math.abs(budget.expandedUncertainty - halfWidth);
  const found = `drawing gives ${halfWidth.toPrecision(4)}, the budget ${budget.expandedUncertainty.toPrecision(4)}`;
  const apart = `${found}; they may differ by ${numericalTolerance.toPrecision(1)}`;
  if (difference - numericalTolerance <= 2 * halfWidthUncertainty)
    return `${apart}, and ${draws} draws are too few to tell more from chance`;
  return `${apart}: ${causeOf(budget)}`;
}

function causeOf({ coverageBasis }: Budget): string {
  switch (coverageBasis) {
    case "Student t":
      return "effective degrees of freedom only approximate a sum of few readings and other shapes";
    case "normal":
      return "the sum of the contributions is not normal";
    default:
      return "the contributions beside the dominant ones change the shape of the sum";
  }
}
