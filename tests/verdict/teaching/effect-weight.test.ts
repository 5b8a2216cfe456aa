import { expect, test } from "vitest";
import { effectWeight } from "../../../src/verdict/teaching/effect-weight.ts";

test.each([
  [-6.3, 14, "counts"],
  [2.49, 10, "small"],
  [2.5, 10, "counts"],
  [-10, 10, "counts"],
  [10.1, 10, "beyond"],
  [0, 0, "small"],
  [0.1, 0, "beyond"],
] as const)("%d beside ±%d: %s", (effect, tolerance, weight) => {
  expect(effectWeight(effect, tolerance)).toBe(weight);
});
