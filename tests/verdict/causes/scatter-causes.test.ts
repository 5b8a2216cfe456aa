import { expect, test } from "vitest";
import { scatterEverywhere } from "../../../src/verdict/causes/scatter-causes.ts";
import { findingsOf, nothingWrong, planted } from "./planted.ts";

// The tolerance of the planted loop is ±0.5 % of span.

test("readings that scatter by the whole tolerance send to target and supply first", () => {
  const [found] = findingsOf([scatterEverywhere], planted(nothingWrong, { noise: 0.4, cycles: 4 }));
  expect(found?.id).toBe("scatter-everywhere");
  // Planted 0.4 % of span; 66 degrees of freedom know it within 30 %.
  expect(Math.abs(found!.evidence[0]!.value / 0.4 - 1)).toBeLessThan(0.3);
  expect(scatterEverywhere.remedy.cures).toBe("set-up");
});

test("a quarter of the tolerance is no finding, whatever the number of cycles", () => {
  for (const cycles of [2, 3, 10]) {
    expect(findingsOf([scatterEverywhere], planted(nothingWrong, { noise: 0.1, cycles }))).toEqual([]);
  }
});
