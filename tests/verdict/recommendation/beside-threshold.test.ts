import { expect, test } from "vitest";
import { exceeds, reaches } from "../../../src/verdict/recommendation/beside-threshold.ts";

test("a threshold is reached on it and beyond it, and exceeded beyond it alone", () => {
  expect([0.7999, 0.8, 0.8001].map((part) => reaches(part, 80))).toEqual([false, true, true]);
  expect([0.7999, 0.8, 0.8001].map((part) => exceeds(part, 80))).toEqual([false, false, true]);
});

test("how a decimal number is stored does not decide", () => {
  // 100 · 0.29 is stored as less than 29, 100 · 0.55 as more than 55.
  expect(100 * 0.29).toBeLessThan(29);
  expect(100 * 0.55).toBeGreaterThan(55);
  for (let percent = 1; percent <= 100; percent += 1) {
    expect(reaches(percent / 100, percent)).toBe(true);
    expect(exceeds(percent / 100, percent)).toBe(false);
  }
});
