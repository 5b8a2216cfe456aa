import { expect, test } from "vitest";
import { contribution, type StatedContribution } from "../../../src/analysis/uncertainty/contribution.ts";

const stated = (parts: Partial<StatedContribution>): StatedContribution =>
  Object.freeze({ source: "test", value: 1, unit: "mm", distribution: "rectangular", ...parts });

const near = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThan(1e-15);

test("half a step of 1 mm has a standard uncertainty of 0.2887 mm", () => {
  const line = contribution({ source: "resolution", value: 0.5, unit: "mm", distribution: "rectangular" });
  expect(Math.abs(line.standardUncertainty - 0.2887)).toBeLessThan(0.5e-4);
  expect(line.sensitivity).toBe(1);
  expect(line.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
});

test("the divisor follows from the distribution of a half-width", () => {
  near(contribution(stated({ distribution: "rectangular" })).standardUncertainty, 1 / Math.sqrt(3));
  near(contribution(stated({ distribution: "triangular" })).standardUncertainty, 1 / Math.sqrt(6));
  near(contribution(stated({ distribution: "arcsine" })).standardUncertainty, 1 / Math.sqrt(2));
  for (const [edgeParameter, variance] of [
    [0, 1 / 6],
    [0.4, 1.16 / 6],
    [1, 1 / 3],
  ] as const) {
    const line = contribution(stated({ distribution: "trapezoidal", edgeParameter }));
    near(line.standardUncertainty ** 2, variance);
  }
});

test("a stated divisor is taken, and the sign of the sensitivity does not matter", () => {
  const line = contribution(
    stated({ value: 0.3, distribution: "normal", divisor: 2, sensitivity: -4, degreesOfFreedom: 9 }),
  );
  near(line.standardUncertainty, 0.6);
  expect(line.sensitivity).toBe(-4);
  expect(line.degreesOfFreedom).toBe(9);
  near(contribution(stated({ divisor: 1 })).standardUncertainty, 1);
});

test("a value of nothing is a line of nothing", () => {
  expect(contribution(stated({ value: 0 })).standardUncertainty).toBe(0);
});

test.each<Partial<StatedContribution>>([
  { distribution: "normal" },
  { distribution: "normal", divisor: 0 },
  { distribution: "normal", divisor: Number.POSITIVE_INFINITY },
  { distribution: "trapezoidal" },
  { distribution: "trapezoidal", edgeParameter: 1.1 },
  { distribution: "trapezoidal", edgeParameter: 0.5, divisor: 2 },
  { distribution: "rectangular", edgeParameter: 0.5 },
  { value: -1 },
  { value: Number.NaN },
  { sensitivity: Number.POSITIVE_INFINITY },
  { degreesOfFreedom: 0.5 },
  { degreesOfFreedom: Number.NaN },
])("%o is refused, with the source named", (parts) => {
  expect(() => contribution(stated(parts))).toThrow(RangeError);
  expect(() => contribution(stated(parts))).toThrow("test: ");
});
