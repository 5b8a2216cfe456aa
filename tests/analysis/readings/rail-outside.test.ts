import { expect, test } from "vitest";
import { loopOf } from "../../../src/analysis/readings/loop.ts";
import { isRailOutside } from "../../../src/analysis/readings/rail-outside.ts";
import type { Instrument } from "../../../src/model/instrument.ts";

const loop = loopOf({
  ...{ tag: "LT-1", rangeLower: 200, rangeUpper: 1200, distanceUnit: "mm", signalLower: 0, signalUpper: 10 },
  ...{ signalUnit: "V", tolerance: 0.5, toleranceBasis: "percent of span" },
} as Instrument);
const reading = { reference: 200 };
const rail = (expected: number, isIdealRailed: boolean) => ({ index: 0, end: "low" as const, expected, isIdealRailed });

test("at an end where the ideal signal stands too, only what is shown counts: 5 mm are allowed", () => {
  expect(isRailOutside(reading, rail(-3, true), 0, loop)).toBe(false);
  expect(isRailOutside(reading, rail(-3, true), 5.1, loop)).toBe(true);
  expect(isRailOutside(reading, rail(-3, true), undefined, loop)).toBe(false);
});

test("elsewhere what the others expect counts as well; a reading at no end is not asked", () => {
  expect(isRailOutside(reading, rail(-0.4, false), 0, loop)).toBe(false);
  expect(isRailOutside(reading, rail(-3, false), 0, loop)).toBe(true);
  expect(isRailOutside(reading, undefined, 99, loop)).toBe(false);
});
