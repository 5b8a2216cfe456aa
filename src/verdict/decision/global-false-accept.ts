import { normalCumulative, normalQuantile } from "../../numeric/normal-distribution.ts";

/** Shares of all instruments that come to be judged: passed though out of tolerance, failed though in tolerance. */
export type GlobalRisk = { falseAccept: number; falseReject: number };

/** What a calibration and the instruments that come to it are like. */
export type JudgedPopulation = {
  /** T / (2u), u the standard uncertainty of the measured error, tolerance ±T. */
  testUncertaintyRatio: number;
  /** Share of instruments whose true error is in tolerance; not the share that was observed to pass. */
  inToleranceProbability: number;
  /** Acceptance limit over tolerance limit, A/T: 1 for simple acceptance, 1 − w/T for a guard band w. */
  guardMultiplier: number;
};

/** Density beyond this many standard deviations is under 1e-32 of what counts. */
const reach = 12;
/** Steps for one standard deviation; Simpson's rule is then good to about 1e-10 of the result. */
const stepsPerDeviation = 100;

/**
 * Gives the shares of false passes and false fails over all instruments, before any of them is measured.
 *
 * True errors are normal about 0 with the standard deviation that puts the stated share inside ±T; the measured error
 * is the true one plus a normal deviation of u. With T = 1:
 * false accept = 2 ∫ φ(x) · P(−A <= measured <= A | x) dx over x > 1; false reject = 2 ∫ φ(x) · P(outside | x) dx over
 * 0 <= x <= 1.
 *
 * @param population ratio > 0 and finite, in-tolerance probability strictly between 0 and 1, multiplier >= 0 and finite
 * @returns two probabilities of the whole, not of the passed or failed ones; about 9 digits, and an absolute 1e-30
 * Faults: `RangeError` for a value outside these ranges.
 * Source: JCGM 106:2012, 9.5.2 (global consumer's and producer's risk); ANSI/NCSL Z540.3-2006, 5.3 for the rule of 2 %.
 * @example globalFalseAccept({ testUncertaintyRatio: 4, inToleranceProbability: 0.95, guardMultiplier: 1 })
 * // falseAccept 0.00858266, falseReject 0.01553651
 */
export function globalFalseAccept(population: JudgedPopulation): GlobalRisk {
  requirePopulation(population);
  const { testUncertaintyRatio, inToleranceProbability, guardMultiplier: acceptance } = population;
  const deviation = 1 / normalQuantile((1 + inToleranceProbability) / 2);
  const uncertainty = 1 / (2 * testUncertaintyRatio);
  const density = (x: number) => Math.exp(-0.5 * (x / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI));
  const above = (x: number) => normalCumulative((x - acceptance) / uncertainty);
  const below = (x: number) => normalCumulative((-acceptance - x) / uncertainty);
  const accepted = (x: number) => normalCumulative((acceptance - x) / uncertainty) - below(x);
  const step = Math.min(deviation, uncertainty) / stepsPerDeviation;
  const end = Math.max(1, Math.min(reach * deviation, acceptance + reach * uncertainty));
  const start = Math.min(1, Math.max(0, acceptance - reach * uncertainty));
  return {
    falseAccept: 2 * simpson((x) => density(x) * accepted(x), 1, end, step),
    falseReject: 2 * simpson((x) => density(x) * (above(x) + below(x)), start, 1, step),
  };
}

function requirePopulation(population: JudgedPopulation): void {
  const { testUncertaintyRatio, inToleranceProbability, guardMultiplier } = population;
  if (!(testUncertaintyRatio > 0 && Number.isFinite(testUncertaintyRatio)))
    throw new RangeError(`a test uncertainty ratio of ${testUncertaintyRatio} is not a number above 0`);
  if (!(inToleranceProbability > 0 && inToleranceProbability < 1))
    throw new RangeError(`an in-tolerance probability of ${inToleranceProbability} is not between 0 and 1`);
  if (!(guardMultiplier >= 0 && Number.isFinite(guardMultiplier)))
    throw new RangeError(`a guard multiplier of ${guardMultiplier} is not a number >= 0`);
}

function simpson(height: (x: number) => number, from: number, to: number, greatestStep: number): number {
  const panels = Math.max(1, Math.ceil((to - from) / (2 * greatestStep)));
  const width = (to - from) / panels;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const left = from + panel * width;
    sum += height(left) + 4 * height(left + width / 2) + height(left + width);
  }
  return (sum * width) / 6;
}
