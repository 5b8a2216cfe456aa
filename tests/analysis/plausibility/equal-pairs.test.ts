import { expect, test } from "vitest";
import { equalPairs, pairsAmong } from "../../../src/analysis/plausibility/equal-pairs.ts";

test("pairs are counted as if each were compared with each", () => {
  const values = ["a", "b", "a", undefined, "a", undefined, "b"];
  let [pairs, equal] = [0, 0];
  for (const [at, value] of values.entries()) {
    for (const other of values.slice(at + 1)) {
      pairs += 1;
      if (other === value) equal += 1;
    }
  }
  expect([pairsAmong(values.length), equalPairs(values)]).toEqual([pairs, equal]);
  expect([pairsAmong(1), equalPairs([])]).toEqual([0, 0]);
});
