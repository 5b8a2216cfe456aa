import { expect, it } from "vitest";
import { statedRisks } from "./stated-risk.ts";

/**
 * 120 records of five points, of which some 75 points have a risk between 1 and 99 %; the seed is fixed. They belong to
 * some 40 records, so that the share outside has a standard deviation of 0.08 at most; in the runs of
 * docs/uncertainty-simulated.md it is 0.17 below what is stated, so that other seeds break the limit once in 1000.
 */
it("the risk that is stated is no smaller than what is so, and tells the good from the bad", () => {
  const bins = statedRisks(120, 9_000_000);
  const between = bins.filter(({ from, to }) => from >= 0.01 && to <= 0.99);
  const points = between.reduce((sum, bin) => sum + bin.points, 0);
  const meanOf = (which: "stated" | "outside") =>
    between.reduce((sum, bin) => sum + (bin.points === 0 ? 0 : bin.points * bin[which]), 0) / points;
  expect(points).toBeGreaterThan(40);
  expect(meanOf("outside")).toBeLessThan(meanOf("stated") + 0.08);
  expect(bins[0]?.outside).toBeLessThan(0.01);
  expect(bins.at(-1)?.outside).toBeGreaterThan(0.98);
});
