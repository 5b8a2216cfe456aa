import { expect, test } from "vitest";
import { errorCurve, readingsByPoint } from "../../../src/analysis/figures/error-curve.ts";
import { curveReading } from "../sample-loop.ts";

test("errors of 1 rising and 3 falling at one test point have the mean 2", () => {
  const curve = errorCurve([
    { point: 0, reference: 0, error: 1, direction: "rising", cycle: 1 },
    { point: 0, reference: 0, error: 3, direction: "falling", cycle: 1 },
  ]);
  expect(curve).toEqual([{ point: 0, reference: 0, up: 1, down: 3, mean: 2 }]);
});

test("the mean is of the two directions, however many readings each has", () => {
  const curve = errorCurve([
    curveReading(0, 1, "rising", 1),
    curveReading(0, 2, "rising", 2),
    curveReading(0, 6, "rising", 3),
    curveReading(0, 7, "falling", 1),
  ]);
  expect(curve[0]).toMatchObject({ up: 3, down: 7, mean: 5 });
});

test("a direction that was not taken is null, and the mean is that of the other", () => {
  expect(errorCurve([curveReading(0, 4, "falling")])[0]).toMatchObject({ up: null, down: 4, mean: 4 });
  expect(errorCurve([curveReading(0, 4, "rising")])[0]).toMatchObject({ up: 4, down: null, mean: 4 });
});

test("test points come by rising distance; a reference is the mean of those there", () => {
  const curve = errorCurve([
    { ...curveReading(50, 0), reference: 50.5 },
    { ...curveReading(9, 0), reference: 9 },
    { ...curveReading(50, 0), reference: 49 },
  ]);
  expect(curve.map(({ point, reference }) => [point, reference])).toEqual([
    [9, 9],
    [50, 49.75],
  ]);
});

test("no readings are a caller's mistake", () => {
  expect(() => errorCurve([])).toThrow(RangeError);
});

test("readings are gathered by test point, by rising distance and in the order given", () => {
  const grouped = readingsByPoint([
    { point: 5, reference: 5, error: 1, direction: "rising", cycle: 1 },
    { point: 0, reference: 0, error: 2, direction: "rising", cycle: 1 },
    { point: 5, reference: 5, error: 3, direction: "rising", cycle: 2 },
  ]);
  expect(grouped.map(([point]) => point)).toEqual([0, 5]);
  expect(grouped[1]?.[1].map(({ error }) => error)).toEqual([1, 3]);
});
