import { expect, test } from "vitest";
import { lackOfFitLimit } from "../../../src/analysis/uncertainty/lack-of-fit-limit.ts";
import { fQuantile } from "../../../src/numeric/f-quantile.ts";
import { randomFrom } from "../../computed/loops/random.ts";
import { fewestByChance, mostByChance } from "../../computed/uncertainty/shares.ts";
import { expectNear } from "../sample-loop.ts";

const placed = (deviations: readonly number[], degreesOfFreedom: number) =>
  deviations.map((deviation, point) => ({
    ...{ abscissa: point, point, weightedBy: 1, uncertainty: deviation, ofScatter: deviation, degreesOfFreedom },
  }));

test("means that scatter as they are weighted, by what is known of all together, have the F test of lack of fit", () => {
  const means = placed([1, 1, 1, 1, 1], 8).map((mean) => ({ ...mean, point: 0 }));
  const { limit, scatterDegreesOfFreedom } = lackOfFitLimit(means);
  expectNear(scatterDegreesOfFreedom, 8, 1e-12);
  expectNear(limit, 3 * fQuantile(0.95, 3, 8), 1e-12);
});

test("the docblock's line: leverages of 0.7 and 0.3 by hand", () => {
  // m = 0.3, 0.7, 0.7, 0.3 (NIST/SEMATECH e-Handbook 4.1.4.1, leverage of a line), so f2 = 2²/((0.09 + 0.49) · 2/4).
  const { limit, scatterDegreesOfFreedom } = lackOfFitLimit(placed([1, 1, 1, 1], 4));
  expectNear(scatterDegreesOfFreedom, 4 / (1.16 / 4), 1e-12);
  expectNear(limit, 2 * fQuantile(0.95, 2, 4 / 0.29), 1e-12);
  expect(limit).toBeCloseTo(7.504, 3);
});

test("means that are weighted, and scatter, each in its own way: by matrices in R 4.2.2, M = I − P, traces of MΛ and MΛMΛ, qf", () => {
  const means = [
    [0, 1, 0.8, 0.6, 4],
    [10, 0.5, 0.9, 0.9, 4],
    [25, 2, 1.5, 1.2, 6],
    [40, 1, 2.5, 2, 6],
    [70, 1.5, 3, 2.8, 3],
  ].map(([abscissa = 0, weightedBy = 0, uncertainty = 0, ofScatter = 0, degreesOfFreedom = 0]) => {
    return { point: abscissa, abscissa, weightedBy, uncertainty, ofScatter, degreesOfFreedom };
  });
  const { limit, scatterDegreesOfFreedom } = lackOfFitLimit(means);
  expectNear(limit / 25.87478254574122, 1, 1e-12);
  expectNear(scatterDegreesOfFreedom / 28.5410916984057, 1, 1e-12);
});

test("what is known for certain is held against chi-squared of the same two moments", () => {
  const means = placed([1, 1, 2, 2], 4).map((mean) => ({ ...mean, ofScatter: 0 }));
  expect(lackOfFitLimit(means).scatterDegreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
});

/** Straight lines whose means scatter by 0.2 to 1.8, each known from four repeats more: how many the limit refuses. */
test("a straight line is refused in five of a hundred where the scatter grows, and in more by one scatter for all", () => {
  const random = randomFrom(41);
  const deviations = Array.from({ length: 11 }, (_, point) => 0.2 + 0.16 * point);
  const trials = Array.from({ length: 3000 }, () => {
    const outputs = deviations.map((deviation) => random.normal(deviation));
    const known = deviations.map((deviation) =>
      Math.sqrt([1, 2, 3, 4].reduce((sum) => sum + random.normal(deviation) ** 2, 0) / 4),
    );
    const chiSquared = squaresAboutLine(outputs);
    const pooled = known.reduce((sum, one) => sum + one ** 2, 0) / known.length;
    return {
      own: chiSquared > lackOfFitLimit(placed(known, 4)).limit,
      pooled: chiSquared / pooled > 9 * fQuantile(0.95, 9, 44),
    };
  });
  const refusedBy = (which: "own" | "pooled") => trials.filter((trial) => trial[which]).length;
  // Satterthwaite's approximation is worth 1 %; beyond that other seeds break a limit with less than one in a million.
  expect(refusedBy("own")).toBeGreaterThanOrEqual(fewestByChance(trials.length, 0.04));
  expect(refusedBy("own")).toBeLessThanOrEqual(mostByChance(trials.length, 0.06));
  expect(refusedBy("pooled")).toBeGreaterThan(mostByChance(trials.length, 0.06));
});

/** Textbook least squares, on 0, 1, 2 …. */
function squaresAboutLine(outputs: readonly number[]): number {
  const middle = (outputs.length - 1) / 2;
  const level = outputs.reduce((sum, one) => sum + one, 0) / outputs.length;
  const runs = outputs.reduce((sum, _, index) => sum + (index - middle) ** 2, 0);
  const slope = outputs.reduce((sum, one, index) => sum + one * (index - middle), 0) / runs;
  return outputs.reduce((sum, one, index) => sum + (one - level - slope * (index - middle)) ** 2, 0);
}
