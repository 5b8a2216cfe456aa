import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { repeatability } from "../../../src/analysis/figures/repeatability.ts";
import { curveReading, expectNear } from "../sample-loop.ts";

test("0.25, 0.75 and 0.5 rising at 5 lie 0.5 apart; their standard deviation is 0.25 on 2 degrees of freedom", () => {
  const found = repeatability([
    { point: 5, reference: 5, error: 0.25, direction: "rising", cycle: 1 },
    { point: 5, reference: 5, error: 0.75, direction: "rising", cycle: 2 },
    { point: 5, reference: 5, error: 0.5, direction: "rising", cycle: 3 },
  ]);
  expect(found).toEqual({ percentSpan: 0.5, point: 5, direction: "rising", pooledStdDev: 0.25, degreesOfFreedom: 2 });
});

test("the widest spread of any point and direction counts, and the pool is of all of them", () => {
  const found = repeatability([
    curveReading(0, 0, "rising", 1),
    curveReading(0, 1, "rising", 2),
    curveReading(0, 50, "falling", 1),
    curveReading(5, 10, "falling", 1),
    curveReading(5, 13, "falling", 2),
  ]);
  if (!isDetermined(found)) throw new Error(found.notDetermined);
  expect(found).toMatchObject({ percentSpan: 3, point: 5, direction: "falling", degreesOfFreedom: 2 });
  // Variances 0.5 and 4.5, one degree of freedom each: √2.5. Tolerance: two roundings.
  expectNear(found.pooledStdDev, Math.sqrt(2.5), 1e-15);
});

test.each([
  ["one cycle only", [curveReading(0, 1), curveReading(5, 2), curveReading(5, 3, "falling")]],
  ["no test point was read twice in the same direction", [curveReading(0, 1), curveReading(5, 2, "rising", 2)]],
  ["no usable reading", []],
])("not determined: %s", (notDetermined, readings) => {
  expect(repeatability(readings)).toEqual({ notDetermined });
});
