import { expect, test } from "vitest";
import {
  justTaughtWords,
  leftWords,
  partWords,
  passingWords,
  sentence,
  worstOf,
} from "../../../src/verdict/recommendation/state-words.ts";

test("a part of the tolerance is a percentage, from twice on a multiple", () => {
  expect(partWords(0.3237)).toBe("32 % of the tolerance");
  expect(partWords(-1.9)).toBe("190 % of the tolerance");
  expect(partWords(6.74)).toBe("6.7 times the tolerance");
});

test("what a correction leaves has its size and its part", () => {
  expect(leftWords({ statement: "pass", errorDistance: -2.41, part: 0.18 }, { unit: "mm" })).toBe(
    "2.41 mm (18 % of the tolerance)",
  );
});

test("a clause becomes a sentence", () => {
  expect(sentence("mend the mount")).toBe("Mend the mount.");
});

test("a sensor that passed before it was taught is not off all the same", () => {
  const still = "It is off all the same.";
  expect(justTaughtWords({ isJustTaught: true, isPassingBefore: false }, still)).toEqual([still]);
  expect(justTaughtWords({ isJustTaught: true, isPassingBefore: true }, still)).toEqual([
    "It passed before it was taught: the teach put it off, or the phases as found and as left are exchanged; look first which.",
  ]);
  expect(justTaughtWords({ isJustTaught: false, isPassingBefore: true }, still)).toEqual([]);
});

test("no sentence joins that it passes with a reading beyond the tolerance", () => {
  expect(passingWords(0.33, "It passes")).toBe("It passes: the worst reading is 33 % of the tolerance");
  expect(passingWords(1, "It passes")).toBe("It passes: the worst reading is 100 % of the tolerance");
  expect(passingWords(2, "It passes")).toBe(
    "By the rule the mean errors pass, and single readings lie outside: the worst is 2 times the tolerance",
  );
});

test("the worst reading is that of the end of the loop", () => {
  const part = (worst: number) => ({ statement: "pass", worst, forecast: null }) as const;
  expect(worstOf({ sensor: part(0.3), controller: part(0.2) })).toBe(0.2);
  expect(worstOf({ sensor: part(0.3), controller: null })).toBe(0.3);
  expect(worstOf({ sensor: null, controller: null })).toBe(0);
});
