import { expect, test } from "vitest";
import { type AnalogPoint, analogErrorAt } from "../../../src/analysis/switching/analog-error-at.ts";
import { frozen } from "../../charts/frozen.ts";

const points: readonly AnalogPoint[] = frozen([
  { reference: 0, up: 1, down: 2, mean: 1.5, expandedUncertainty: 0.3 },
  { reference: 100, up: 3, down: 6, mean: 4.5, expandedUncertainty: 0.4 },
  { reference: 200, up: null, down: 8, mean: 8, expandedUncertainty: 0.2 },
]);

test("a quarter of the way from 2 % to 6 % is 3 %, 6 on a span of 200; U is the greater of the two", () => {
  expect(analogErrorAt(points, 25, "approach", 200)).toEqual({ errorDistance: 6, expandedUncertainty: 0.4 });
});

test("a recede is compared with the rising readings: 1.5 %", () => {
  expect(analogErrorAt(points, 25, "recede", 200)).toMatchObject({ errorDistance: 3 });
});

test("where a neighbour was not read in that direction, the means stand for both", () => {
  expect(analogErrorAt(points, 150, "recede", 100)).toMatchObject({ errorDistance: 6.25, expandedUncertainty: 0.4 });
});

test("at a test point its own error is given, at both ends too", () => {
  expect(analogErrorAt(points, 100, "approach", 100)).toEqual({ errorDistance: 6, expandedUncertainty: 0.4 });
  expect(analogErrorAt(points, 0, "approach", 100)).toEqual({ errorDistance: 2, expandedUncertainty: 0.3 });
  expect(analogErrorAt(points, 200, "approach", 100)).toEqual({ errorDistance: 8, expandedUncertainty: 0.2 });
});

test("an outermost point stands for a place within 2 % of span beyond it, with its own error", () => {
  for (const [end, beyond] of [
    [0, -2],
    [200, 202],
  ] as const) {
    expect(analogErrorAt(points, beyond, "approach", 100)).toEqual(analogErrorAt(points, end, "approach", 100));
  }
});

test("nothing is extrapolated", () => {
  const none = { notDetermined: "the set point lies outside the test points" };
  expect(analogErrorAt(points, -2.1, "approach", 100)).toEqual(none);
  expect(analogErrorAt(points, 202.1, "approach", 100)).toEqual(none);
  expect(analogErrorAt([], 100, "approach", 100)).toEqual(none);
});
