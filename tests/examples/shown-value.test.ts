import { expect, test } from "vitest";
import { isShown, shownValue } from "./shown-value.ts";

const fits = (text: string, given: unknown) => {
  const shown = shownValue(text);
  return shown === undefined ? "no value" : isShown(shown, given);
};

test.each<[string, unknown, unknown]>([
  ["5", 5, 4],
  ["-0.4804", -0.48038, -0.48031],
  ["0.48", 0.48, 0.4804],
  ["1e-9", 1e-9, 1.4e-9],
  ["true", true, 1],
  ["undefined", undefined, null],
  ['"low, or so"', "low, or so", "low"],
  [`'"quoted"'`, '"quoted"', "quoted"],
  ["[1, 2]", [1, 2], [1, 2, 3]],
  ["[1, …]", [1, 2], [2, 1]],
  ["[0.5, 0.5]", Float64Array.of(0.5, 0.5), "0.5"],
  ['{ low: -1, high: [{ name: "a" }] }', { low: -1, high: [{ name: "a" }] }, { low: -1, high: [{ name: "b" }] }],
  ["{ low: -1 }", { low: -1, more: undefined }, { low: -1, more: 2 }],
  ["{ low: -1, … }", { low: -1, more: 2 }, { more: 2 }],
  ["[]", [], [1]],
  ["{}", {}, { low: 1 }],
  ["slope 3, intercept -1", { slope: 3, intercept: -1, more: 0 }, { slope: 3 }],
  ["5, for a loop of 4 mA", 5, 6],
  ["0.1041 = √(0.1² + 0.05²/3)", 0.10408, 0.2],
  ['"fail": it lies outside', "fail", "pass"],
])("%s", (text, given, other) => {
  expect(fits(text, given)).toBe(true);
  expect(fits(text, other)).toBe(false);
});

test.each(["the corners", "", "[1, 2", "{ low: }", "4 of 5"])("%s is no value of one thing", (text) => {
  expect([fits(text, {}), fits(text, [])]).not.toContain(true);
});
