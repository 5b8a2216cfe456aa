import { normalCumulative, normalQuantile } from "../../src/numeric/normal-distribution.ts";

// The slow road beside src/verdict/decision/global-false-accept.ts: over the measured error instead of the true one, by the
// midpoint rule instead of Simpson's.

const STRIPS = 2000;
/** Standard deviations beyond which nothing is left to add, 1e-19. */
const REACH = 9;

/**
 * Probability that an error is out of ±1 and measured within ±acceptance. Given the measured error y, the true one is
 * normal about r·y with deviation σu/√(σ² + u²), r = σ²/(σ² + u²): Bayes' rule for two normal densities.
 */
export function falseAcceptByMeasuredError(uncertainty: number, inToleranceRate: number, acceptance: number): number {
  const { density, outside, share, remaining } = givenMeasured(uncertainty, inToleranceRate);
  const from = Math.min(acceptance, Math.max(0, (1 - REACH * remaining) / share));
  return 2 * midpointSum((y) => density(y) * outside(y), from, acceptance);
}

/** Probability that an error is inside ±1 and measured beyond ±acceptance. */
export function falseRejectByMeasuredError(uncertainty: number, inToleranceRate: number, acceptance: number): number {
  const { density, outside, deviation, share, remaining } = givenMeasured(uncertainty, inToleranceRate);
  const to = Math.min(acceptance + REACH * deviation, (1 + REACH * remaining) / share);
  return 2 * midpointSum((y) => density(y) * (1 - outside(y)), acceptance, Math.max(acceptance, to));
}

function givenMeasured(uncertainty: number, inToleranceRate: number) {
  const prior = 1 / normalQuantile((1 + inToleranceRate) / 2);
  const deviation = Math.hypot(prior, uncertainty);
  const share = (prior / deviation) ** 2;
  const remaining = (prior * uncertainty) / deviation;
  return {
    deviation,
    share,
    remaining,
    density: (y: number) => Math.exp(-0.5 * (y / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI)),
    outside: (y: number) =>
      normalCumulative((share * y - 1) / remaining) + normalCumulative((-1 - share * y) / remaining),
  };
}

function midpointSum(height: (y: number) => number, from: number, to: number): number {
  const width = (to - from) / STRIPS;
  let sum = 0;
  for (let strip = 0; strip < STRIPS; strip++) sum += height(from + (strip + 0.5) * width);
  return sum * width;
}
