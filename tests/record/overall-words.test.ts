import { expect, test } from "vitest";
import { overallWords } from "../../src/record/overall-words.ts";

test("from best to worst: nothing undecided is better than a pass, nor worse than a fail", () => {
  expect([overallWords[0], overallWords.at(-1)]).toEqual(["pass", "fail"]);
  expect(new Set(overallWords).size).toBe(overallWords.length);
});
