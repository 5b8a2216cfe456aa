import { expect, test } from "vitest";
import { greatestPart, partAt } from "../../../src/analysis/readings/part-at.ts";
import { signalLoop } from "../sample-loop.ts";

const ofReading = { ...signalLoop, toleranceTerms: [{ basis: "percent of reading", plus: 2, minus: 1 } as const] };

test("an error in percent of span over the tolerance at its distance, on its own side", () => {
  const span = ofReading.characteristics.signal.rangeUpper - ofReading.characteristics.signal.rangeLower;
  const at = ofReading.characteristics.signal.rangeUpper;
  expect(partAt(ofReading, 1, at)).toBeCloseTo(span / 100 / (0.02 * at), 14);
  expect(partAt(ofReading, -1, at)).toBeCloseTo(span / 100 / (0.01 * at), 14);
  expect(partAt(ofReading, 0, at)).toBe(0);
});

test("where nothing is allowed it is that of the middle of the range", () => {
  const { rangeLower, rangeUpper } = ofReading.characteristics.signal;
  expect(partAt(ofReading, 1, 0)).toBe(partAt(ofReading, 1, (rangeLower + rangeUpper) / 2));
});

test("the greatest part of some errors passes over those to which nothing is allowed", () => {
  const one = (error: number, limit: number) => ({ error, toleranceLow: -limit, toleranceHigh: limit });
  expect(greatestPart([one(1, 4), one(-3, 4), one(9, 0)])).toBe(0.75);
  expect(greatestPart([])).toBe(0);
});
