import { expect, test } from "vitest";
import { hysteresis, hysteresisWithinOneCycle } from "../../../src/analysis/figures/hysteresis.ts";
import { curveReading } from "../sample-loop.ts";

const at = (point: number, up: number | null, down: number | null) =>
  Object.freeze({ point, reference: point, up, down, mean: 0 });

test("0.25 rising and 0.5 falling at 5 differ by 0.25", () => {
  expect(hysteresis([{ point: 5, reference: 5, up: 0.25, down: 0.5, mean: 0.375 }])).toEqual({
    percentSpan: 0.25,
    point: 5,
  });
});

test("the greatest difference counts, whichever direction lies higher", () => {
  expect(hysteresis([at(0, 0.25, 0.5), at(5, 0.5, -0.25), at(9, 0, 0.5)])).toEqual({ percentSpan: 0.75, point: 5 });
});

test("a difference of 0 is a figure; one direction is none", () => {
  expect(hysteresis([at(0, 1, 1)])).toEqual({ percentSpan: 0, point: 0 });
  const reason = { notDetermined: "no test point was read in both directions" };
  expect(hysteresis([at(0, 1, null), at(5, null, 2)])).toEqual(reason);
  expect(hysteresis([])).toEqual(reason);
});

test("within cycle 2: 0.25 rising and 0.5 falling at 5 differ by 0.25", () => {
  const found = hysteresisWithinOneCycle([
    { point: 5, reference: 5, error: 0.25, direction: "rising", cycle: 2 },
    { point: 5, reference: 5, error: 0.5, direction: "falling", cycle: 2 },
  ]);
  expect(found).toEqual({ percentSpan: 0.25, point: 5, cycle: 2 });
});

test("differences that the means even out remain within their cycle", () => {
  const readings = [
    curveReading(5, 0, "rising", 1),
    curveReading(5, 1, "falling", 1),
    curveReading(5, 1, "rising", 2),
    curveReading(5, 0, "falling", 2),
  ];
  expect(hysteresisWithinOneCycle(readings)).toEqual({ percentSpan: 1, point: 5, cycle: 1 });
});

test("directions of different cycles make no cycle", () => {
  const reason = { notDetermined: "no cycle has a test point that was read in both directions" };
  expect(hysteresisWithinOneCycle([curveReading(5, 0, "rising", 1), curveReading(5, 9, "falling", 2)])).toEqual(reason);
  expect(hysteresisWithinOneCycle([])).toEqual(reason);
});
