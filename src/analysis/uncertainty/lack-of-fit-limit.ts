import { fQuantile } from "../../numeric/f-quantile.ts";

/** A mean on the line: how it is weighted, and what it truly scatters by; all in the unit of the outputs. */
export type ScatteringMean = {
  abscissa: number;
  /** Standard uncertainty by which the line weights it. */
  weightedBy: number;
  /** Its own, and the part of it that is estimated from repeats, with their degrees of freedom. */
  uncertainty: number;
  ofScatter: number;
  degreesOfFreedom: number;
  /** Means of one test point share what is known of their scatter. */
  point: number;
};

/** The limit of chi-squared, and the degrees of freedom of what it is held against. */
export type LackOfFitLimit = { limit: number; scatterDegreesOfFreedom: number };

const significance = 0.95;

/**
 * The 95 % limit of the chi-squared of a line whose points scatter by more or less than they are weighted for.
 *
 * Chi-squared of the weighted residuals, zᵀMz with M = I − P, P the projection on the weighted line, then has not n − 2 for
 * its mean but E = Σ m(j, j)·λ(j), λ(j) the variance of mean j over that of its weight; f1 = E²/ΣΣ m(j, k)²·λ(j)·λ(k)
 * degrees of freedom, and those of E itself are f2 = E²/Σ(E of the scatter of a test point)²/ν. Where all scatter as they
 * are weighted, f1 = n − 2, and it is the F test of lack of fit. P is of rank two, so that the double sum is one of single
 * sums, and a phase of thousands of means needs no matrix.
 *
 * @param means n >= 3 at two or more abscissas; uncertainties > 0, of scatter >= 0
 * @returns E · F(95 %, f1, f2), and f2, infinite where nothing is estimated
 * Source: G. E. P. Box, Ann. Math. Statist. 25 (1954) 290 (from memory), for the two moments of zᵀMz; F. E. Satterthwaite,
 *   Biometrics Bulletin 2 (1946) 110, for f2; the ratio of M. B. Brown and A. B. Forsythe, Technometrics 16 (1974) 129 (from memory).
 * @example lackOfFitLimit([0, 1, 2, 3].map((point) => ({ abscissa: point, point, weightedBy: 1, uncertainty: 1, ofScatter:
 *   1, degreesOfFreedom: 4 }))).limit // 7.504
 */
export function lackOfFitLimit(means: readonly ScatteringMean[]): LackOfFitLimit {
  const { weights, runs, total, ofRuns } = weightedLine(means);
  const leftOf = (index: number) => 1 - weights[index]! ** 2 / total - runs[index]! ** 2 / ofRuns;
  const part = (of: number, { weightedBy }: ScatteringMean) => (of / weightedBy) ** 2;
  const lambdas = means.map((mean) => part(mean.uncertainty, mean));
  const over = (heightOf: (index: number) => number) => sumOf(lambdas.map((_, index) => heightOf(index)));
  const expected = over((index) => leftOf(index) * lambdas[index]!);
  const ofWeights = over((index) => weights[index]! ** 2 * lambdas[index]!) / total;
  const ofBoth = over((index) => weights[index]! * runs[index]! * lambdas[index]!);
  const ofSlope = over((index) => runs[index]! ** 2 * lambdas[index]!) / ofRuns;
  // ΣΣ m²λλ, of m = δ − p: what the diagonal has beyond p², and ΣΣ p²λλ.
  const squares =
    over((index) => lambdas[index]! ** 2 * (2 * leftOf(index) - 1)) +
    ofWeights ** 2 +
    (2 * ofBoth ** 2) / (total * ofRuns) +
    ofSlope ** 2;
  const ofPoints = new Map<number, { part: number; degreesOfFreedom: number }>();
  for (const [index, mean] of means.entries()) {
    const before = ofPoints.get(mean.point)?.part ?? 0;
    const own = leftOf(index) * part(mean.ofScatter, mean);
    ofPoints.set(mean.point, { part: before + own, degreesOfFreedom: mean.degreesOfFreedom });
  }
  const spread = sumOf([...ofPoints.values()].map(({ part, degreesOfFreedom }) => part ** 2 / degreesOfFreedom));
  const scatterDegreesOfFreedom = expected ** 2 / spread;
  const limit = expected * fQuantile(significance, expected ** 2 / squares, scatterDegreesOfFreedom);
  return { limit, scatterDegreesOfFreedom };
}

/** What P of a straight line is made of, of points weighted by 1/u²: p(j, k) = w(j)·w(k)/Σw² + r(j)·r(k)/Σr². */
function weightedLine(means: readonly ScatteringMean[]) {
  const weights = means.map(({ weightedBy }) => 1 / weightedBy);
  const total = sumOf(weights.map((weight) => weight ** 2));
  const middle = sumOf(means.map(({ abscissa }, index) => weights[index]! ** 2 * abscissa)) / total;
  const runs = means.map(({ abscissa }, index) => weights[index]! * (abscissa - middle));
  return { weights, runs, total, ofRuns: sumOf(runs.map((run) => run ** 2)) };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
