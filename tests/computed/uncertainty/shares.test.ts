import { expect, test } from "vitest";
import { chanceOfAtMost, countsOf, fewestByChance, meanShare, mostByChance, shareOf } from "./shares.ts";

test("tails of the binomial distribution, as R 4.2.2 gives them: pbinom(80, 100, 0.94), pbinom(31, 40, 0.95)", () => {
  expect(chanceOfAtMost(80, 100, 0.94) / 1.823918832619e-6).toBeCloseTo(1, 9);
  expect(chanceOfAtMost(31, 40, 0.95) / 1.29581848490866e-4).toBeCloseTo(1, 9);
  expect(chanceOfAtMost(1, 3, 0.5)).toBe(0.5);
});

test("fewer or more than chance makes come less than once in a million", () => {
  const [fewest, most] = [fewestByChance(100, 0.94), mostByChance(100, 0.06)];
  expect(chanceOfAtMost(fewest - 1, 100, 0.94)).toBeLessThan(1e-6);
  expect(chanceOfAtMost(fewest, 100, 0.94)).toBeGreaterThanOrEqual(1e-6);
  expect(most).toBe(100 - fewest);
});

test("counts of things that have chances of their own: of equal ones the binomial distribution", () => {
  const found = countsOf([0.25, 0.25, 0.25]);
  for (const [count, expected] of [27, 27, 9, 1].entries()) expect(found[count]).toBeCloseTo(expected / 64, 15);
});

test("a share, and a mean of shares, with their intervals: binom.test(3, 20) of R 4.2.2", () => {
  const { share, low, high } = shareOf([...Array(20).keys()], (one) => one < 3);
  expect(share).toBe(0.15);
  expect(low).toBeCloseTo(0.0320709371854637, 9);
  expect(high).toBeCloseTo(0.378926826545314, 9);
  const mean = meanShare([0.7, 0.8, 0.9, 0.8]);
  expect(mean.high - mean.share).toBeCloseTo(1.96 * Math.sqrt(0.02 / 3 / 4), 12);
});
