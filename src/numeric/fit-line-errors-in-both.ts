import { sum } from "simple-statistics";
import { sumOfProducts } from "./centre.ts";
import { fitLine } from "./fit-line.ts";
import { lineUncertainties, type WeightedLineFit, weightedCentre } from "./fit-line-weighted.ts";
import { requireFinite, requirePoints } from "./require-finite.ts";

/** Points with a standard uncertainty along each axis. */
export type UncertainPoints = {
  readonly abscissas: readonly number[];
  readonly ordinates: readonly number[];
  readonly abscissaUncertainties: readonly number[];
  readonly ordinateUncertainties: readonly number[];
};

type Step = {
  readonly slope: number;
  readonly weights: readonly number[];
  readonly abscissaMean: number;
  readonly ordinateMean: number;
  readonly runs: readonly number[];
  readonly rises: readonly number[];
  /** Runs of the adjusted points: where on the line each point most likely belongs, less the mean abscissa. */
  readonly adjustedRuns: readonly number[];
  /** How steep the points are as a whole; the yardstick for what a step of the slope is worth. */
  readonly steepness: number;
};

const GREATEST_NUMBER_OF_STEPS = 1000;

/**
 * Fits a straight line to points that are uncertain along both axes (generalized distance regression).
 *
 * York's iteration: with the slope b known, each point weighs W = 1/(u²(y) + b²·u²(x)), and the adjusted points give a
 * better b. It starts from the ordinary least-squares slope and ends when a step is within a few roundings of the
 * slope, so there is no tolerance to choose; it meets the minimum of the sum of squares exactly.
 *
 * @param points four arrays of n >= 2 finite numbers in one order: abscissas (not all equal), ordinates, and their
 * standard uncertainties >= 0, at each point at least one of them > 0; all errors uncorrelated
 * @returns as `fitLineWeighted`: uncertainties to first order from those given, not scaled by the scatter; about 13
 * digits. With every abscissa uncertainty 0 it is that function's answer
 * Faults: `RangeError` for lists that differ in length, n < 2, values that are not finite, an uncertainty < 0, a point
 * with neither uncertainty, all abscissas equal, or no end within 1000 steps (points that hold no line at all).
 * Source: ISO/TS 28037:2010 clause 7; D. York, N. M. Evensen, M. L. Martínez, J. De Basabe Delgado, "Unified equations
 * for the slope, intercept, and standard errors of the best straight line", Am. J. Phys. 72, 367 (2004), equations
 * (13a) to (13d) with correlation 0.
 * @example fitLineErrorsInBoth({ abscissas: [0, 1, 2], ordinates: [0, 1, 2], abscissaUncertainties: [1, 1, 1],
 * ordinateUncertainties: [1, 1, 1] }) // slope 1, intercept 0, slopeStandardUncertainty 1
 */
export function fitLineErrorsInBoth(points: UncertainPoints): WeightedLineFit {
  requireUncertainPoints(points);
  const end = converge(points);
  const { weights, slope } = end;
  const adjusted = weightedCentre(end.adjustedRuns, weights);
  const adjustedSumOfSquares = weightedSquares(adjusted.deviations, weights);
  const residuals = end.rises.map((rise, index) => rise - slope * end.runs[index]!);
  return {
    n: points.abscissas.length,
    slope,
    intercept: end.ordinateMean - slope * end.abscissaMean,
    ...lineUncertainties(end.abscissaMean + adjusted.mean, sum([...weights]), adjustedSumOfSquares),
    chiSquared: weightedSquares(residuals, weights),
    degreesOfFreedom: points.abscissas.length - 2,
  };
}

function converge(points: UncertainPoints): Step {
  let step = advance(points, fitLine(points.abscissas, points.ordinates).slope);
  for (let count = 0; count < GREATEST_NUMBER_OF_STEPS; count++) {
    const next = advance(points, step.slope);
    if (Math.abs(next.slope - step.slope) <= 8 * Number.EPSILON * next.steepness) return next;
    step = next;
  }
  throw new RangeError(`no line after ${GREATEST_NUMBER_OF_STEPS} steps; the points determine none`);
}

function advance(points: UncertainPoints, slope: number): Step {
  const acrossVariances = points.abscissaUncertainties.map((uncertainty) => uncertainty * uncertainty);
  const upwardVariances = points.ordinateUncertainties.map((uncertainty) => uncertainty * uncertainty);
  const weights = upwardVariances.map((variance, index) => 1 / (variance + slope * slope * acrossVariances[index]!));
  const across = weightedCentre(points.abscissas, weights);
  const upward = weightedCentre(points.ordinates, weights);
  const adjustedRuns = across.deviations.map((run, index) => {
    const pulled = run * upwardVariances[index]! + slope * upward.deviations[index]! * acrossVariances[index]!;
    return weights[index]! * pulled;
  });
  const weighted = adjustedRuns.map((run, index) => weights[index]! * run);
  return {
    slope: sumOfProducts(weighted, upward.deviations) / sumOfProducts(weighted, across.deviations),
    weights,
    abscissaMean: across.mean,
    ordinateMean: upward.mean,
    runs: across.deviations,
    rises: upward.deviations,
    adjustedRuns,
    steepness: Math.sqrt(weightedSquares(upward.deviations, weights) / weightedSquares(across.deviations, weights)),
  };
}

function weightedSquares(values: readonly number[], weights: readonly number[]): number {
  return sumOfProducts(
    values,
    values.map((value, index) => weights[index]! * value),
  );
}

function requireUncertainPoints(points: UncertainPoints): void {
  requirePoints(points.abscissas, points.ordinates, 2);
  for (const uncertainties of [points.abscissaUncertainties, points.ordinateUncertainties]) {
    requireFinite("uncertainties", uncertainties);
    if (uncertainties.length !== points.abscissas.length)
      throw new RangeError(`${uncertainties.length} uncertainties for ${points.abscissas.length} points`);
    if (uncertainties.some((uncertainty) => uncertainty < 0)) throw new RangeError("an uncertainty is negative");
  }
  if (points.abscissaUncertainties.some((across, index) => across === 0 && points.ordinateUncertainties[index] === 0))
    throw new RangeError("a point has no uncertainty along either axis");
}
