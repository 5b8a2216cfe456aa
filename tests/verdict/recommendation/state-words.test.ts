import { expect, test } from "vitest";
import { justTaughtWords, leftWords, partWords, sentence } from "../../../src/verdict/recommendation/state-words.ts";

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
