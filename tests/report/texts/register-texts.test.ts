import { expect, test } from "vitest";
import { driftWords, dueStates, dueWords, worstErrorWords } from "../../../src/report/texts/register-texts.ts";

test("a worst error has three digits in percent of span and in the loop's unit", () => {
  expect(worstErrorWords({ errorPercentSpan: 0.95123, errorDistance: 25.683 }, "mm")).toBe("+0.951 % (+25.7 mm)");
  expect(worstErrorWords(null, "mm")).toBe("–");
});

test("a drift has two digits, or says why there is none", () => {
  expect(driftWords({ percentSpanPerYear: -0.1234 })).toBe("−0.12");
  expect(driftWords({ notDetermined: "one record only" })).toBe("one record only");
});

test.each([
  [0, "2026-11-25, today"],
  [1, "2026-11-25, in 1 day"],
  [-1, "2026-11-25, 1 day ago"],
  [-40, "2026-11-25, 40 days ago"],
])("a date %i days from today is said as people say it", (days, words) => {
  expect(dueWords({ state: "not due", on: "2026-11-25", days, why: null })).toBe(words);
});

test("without a date it is said why", () => {
  expect(dueWords({ state: "no date", on: null, days: null, why: "no interval is stated" })).toBe(
    "no interval is stated",
  );
});

test("the states are told the most urgent first, each once", () => {
  expect(new Set(dueStates).size).toBe(dueStates.length);
  expect(dueStates[0]).toBe("overdue");
});
