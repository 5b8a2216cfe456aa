import { expect, test } from "vitest";
import { inaccuracy } from "../../../src/analysis/figures/inaccuracy.ts";
import { curveReading } from "../sample-loop.ts";

test("of the errors -0.32, 0.1 and 0.26 the inaccuracy is -0.32 and 0.26", () => {
  const readings = [
    { point: 0, reference: 0, error: -0.32, direction: "rising", cycle: 1 },
    { point: 5, reference: 5, error: 0.26, direction: "rising", cycle: 1 },
  ] as const;
  expect(inaccuracy(readings)).toEqual({ positive: 0.26, negative: -0.32 });
  expect(inaccuracy([...readings, curveReading(2, 0.1)])).toEqual({ positive: 0.26, negative: -0.32 });
});

test("a side on which no reading lies is 0", () => {
  expect(inaccuracy([curveReading(0, 0.1), curveReading(5, 0.2)])).toEqual({ positive: 0.2, negative: 0 });
  expect(inaccuracy([curveReading(0, -0.1)])).toEqual({ positive: 0, negative: -0.1 });
});

test("it is that of single readings, not of their means", () => {
  expect(inaccuracy([curveReading(0, 1, "rising", 1), curveReading(0, -1, "rising", 2)])).toEqual({
    positive: 1,
    negative: -1,
  });
});

test("without a reading there is none", () => {
  expect(inaccuracy([])).toEqual({ notDetermined: "no usable reading" });
});
