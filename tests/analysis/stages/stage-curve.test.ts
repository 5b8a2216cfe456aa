import { expect, test } from "vitest";
import { analyseReadings } from "../../../src/analysis/readings/analyse-readings.ts";
import { stageCurve } from "../../../src/analysis/stages/stage-curve.ts";
import { expectNear, loop, reading, rounding } from "../sample-loop.ts";

test("without readings there is no curve", () => {
  expect(stageCurve([], "value")).toBeUndefined();
});

test("nor without a controller value, or where each was left out", () => {
  const readings = [reading(0, { signal: 4 }), reading(50, { signal: 12, value: 5, rejected: "slipped" })];
  expect(stageCurve(analyseReadings(readings, loop, "signal"), "value")).toBeUndefined();
  expect(
    stageCurve(analyseReadings([reading(50, { signal: 3.5, value: 5 })], loop, "signal"), "value"),
  ).toBeUndefined();
});

test("controller value minus its ideal in percent of span, rising and falling apart, also where no signal was read", () => {
  const readings = [
    reading(50, { signal: 12, value: 5.1 }),
    reading(50, { value: 5.3 }),
    reading(50, { signal: 19, value: 4.9, direction: "falling" }),
    reading(100, { signal: 20 }),
  ];
  const found = stageCurve(analyseReadings(readings, loop, "signal"), "value");
  expect(found?.readings.map(({ direction, cycle }) => [direction, cycle])).toEqual([
    ["rising", 1],
    ["rising", 2],
    ["falling", 1],
  ]);
  expect(found?.curve).toHaveLength(1);
  expectNear(found?.curve[0]?.up, 2, rounding);
  expectNear(found?.curve[0]?.down, -1, rounding);
});
