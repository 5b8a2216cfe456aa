import { describe, expect, test } from "vitest";
import { pointError } from "../../../src/analysis/readings/point-errors.ts";
import { greatestDistanceOf } from "../../../src/model/range.ts";
import { simpleAcceptance } from "../../../src/verdict/decision/simple-acceptance.ts";

test("an error of 9 within ±9 passes", () => {
  expect(simpleAcceptance(9, { low: -9, high: 9 }, 2000)).toBe("pass");
  expect(simpleAcceptance(-9, { low: -9, high: 9 }, 2000)).toBe("pass");
});

test.each([
  [2, "pass"],
  [2.000001, "fail"],
  [-5, "pass"],
  [-5.000001, "fail"],
  [0, "pass"],
] as const)("between -5 and 2 an error of %d: %s", (error, verdict) => {
  expect(simpleAcceptance(error, Object.freeze({ low: -5, high: 2 }), 100)).toBe(verdict);
});

test("a tolerance of zero passes an error of zero and nothing else", () => {
  expect(simpleAcceptance(0, { low: 0, high: 0 }, 100)).toBe("pass");
  expect(simpleAcceptance(1e-9, { low: 0, high: 0 }, 100)).toBe("fail");
});

describe("an error that is on the limit as it was typed passes, whichever way it is stored", () => {
  const line = Object.freeze({ rangeLower: 200, rangeUpper: 2000, outputAtLower: 4, outputAtUpper: 20 });
  // A signal of 4 + k/1000 mA at a reference that lies 9 mm beside what it stands for; decimal, so exactly on the limit.
  const errors = Array.from({ length: 1000 }, (_, index) => {
    const thousandths = 16 * index;
    const stands = 200 + (1800 * thousandths) / 16000;
    return pointError(line, Number((stands - 9).toFixed(4)), Number(`${(4 + thousandths / 1000).toFixed(3)}`))
      .errorDistance;
  });

  test("binary arithmetic puts some of them beyond 9, by no more than 1e-12", () => {
    expect(errors.some((error) => error > 9)).toBe(true);
    expect(Math.max(...errors.map((error) => Math.abs(error - 9)))).toBeLessThan(1e-12);
  });

  test("and all of them pass", () => {
    expect(errors.filter((error) => simpleAcceptance(error, { low: -9, high: 9 }, 2000) === "fail")).toEqual([]);
  });
});

test("the slack is the rounding of numbers, not a measurement: a thousand-millionth of the range beyond fails", () => {
  expect(simpleAcceptance(9 + 1.8e-6, { low: -9, high: 9 }, 1800)).toBe("fail");
  expect(simpleAcceptance(9 + 1e-8, { low: -9, high: 9 }, 1800)).toBe("fail");
  expect(simpleAcceptance(9 + 1e-13, { low: -9, high: 9 }, 1800)).toBe("pass");
});

test("a range of 1 mm that lies four kilometres from zero decides as one that begins there", () => {
  const near = { rangeLower: 0, rangeUpper: 1, outputAtLower: 4, outputAtUpper: 20 };
  const far = { ...near, rangeLower: 4e6, rangeUpper: 4e6 + 1 };
  const thousandths = Array.from({ length: 999 }, (_, index) => index + 1);
  // 4 + 16·k/1000 mA stands for k/1000 mm; the reference lies 0.001 mm beside it: on the limit as typed.
  const errorsOf = (line: typeof near) =>
    thousandths.map((k) => {
      const signal = Number((4 + (16 * k) / 1000).toFixed(3));
      return pointError(line, Number((line.rangeLower + (k - 1) / 1000).toFixed(3)), signal).errorDistance;
    });
  const limits = { low: -0.001, high: 0.001 };
  const failedOf = (line: typeof near) =>
    errorsOf(line).filter((error) => simpleAcceptance(error, limits, greatestDistanceOf(line)) === "fail");
  // A millionth of a millionth of the span, as it was once, would fail some of the far ones.
  expect(errorsOf(far).some((error) => error > 0.001 + 1e-12)).toBe(true);
  expect(failedOf(near)).toEqual([]);
  expect(failedOf(far)).toEqual([]);
});
