import { expect, test } from "vitest";
import { overallSays, overallWords } from "../../src/record/overall-words.ts";

test("from best to worst: nothing undecided is better than a pass, nor worse than a fail", () => {
  expect([overallWords[0], overallWords.at(-1)]).toEqual(["pass", "fail"]);
  expect(new Set(overallWords).size).toBe(overallWords.length);
});

test("a word that is worse than what is missing stands first, and that something is missing after it", () => {
  expect(overallSays("fail", false)).toBe("fail, not complete");
  expect(overallSays("cannot be decided", false)).toBe("cannot be decided, not complete");
  expect(overallSays("not complete", false)).toBe("not complete");
  expect(overallWords.map((word) => overallSays(word, true))).toEqual([...overallWords]);
});
