import { expect, test } from "vitest";
import { limitWords, mostWords, numberWords, outsideWords } from "../../../src/verdict/loop-check/limit-words.ts";

const limits = { low: 12, high: 30 };

test("limits are said with one unit and a true minus sign", () => {
  expect(limitWords(limits, "V")).toBe("12 to 30 V");
  expect(limitWords({ low: 12, high: null }, "V")).toBe("12 V or more");
  expect(limitWords({ low: null, high: 571.428571 }, "Ω")).toBe("571.43 Ω at most");
  expect(limitWords({ low: 2, high: 2 }, "wires")).toBe("exactly 2 wires");
  expect(limitWords({ low: -3, high: 5 }, null)).toBe("−3 to 5");
  expect(limitWords({ low: null, high: null }, "V")).toBe("no limit");
});

test("numbers have no zeros at the end and no exponent", () => {
  expect(numberWords(571.42857, "Ω")).toBe("571.43 Ω");
  expect(numberWords(250, "Ω")).toBe("250 Ω");
  expect(numberWords(0.0000012, null)).toBe("0.0000012");
  expect(numberWords(0, "V")).toBe("0 V");
  expect(numberWords(1e12, null)).toBe("1000000000000");
});

test("what breaks a limit by little is shown with the digits that tell", () => {
  expect(outsideWords(11.4, limits, "V", "")).toBe("11.4 V where 12 to 30 V is allowed");
  expect(outsideWords(571.429, { low: null, high: 571.4285 }, "Ω", " by the tables")).toBe(
    "571.429 Ω by the tables where 571.4285 Ω at most is allowed",
  );
});

test("a number that must not be exceeded is rounded down, also at a power of ten", () => {
  // √19 = 4.3589: 4.4 would be too much.
  expect(mostWords(Math.sqrt(19), "mm", 2)).toBe("4.3 mm");
  expect(mostWords(9.96, "mm", 2)).toBe("9.9 mm");
  expect(mostWords(0.0996, null, 2)).toBe("0.099");
  expect(mostWords(1234, "Ω", 2)).toBe("1200 Ω");
  for (const value of [0.5, 2, 4.4, 10, 120]) expect(mostWords(value, null, 2)).toBe(String(value));
});

test("a stored 0.3 that is a little too small is said as 0.3", () => {
  expect(1.2 - 0.9).toBeLessThan(0.3);
  expect(mostWords(1.2 - 0.9, "mm", 2)).toBe("0.3 mm");
});
