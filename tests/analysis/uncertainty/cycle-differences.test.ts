import { describe, expect, test } from "vitest";
import { cycleDifferences } from "../../../src/analysis/uncertainty/cycle-differences.ts";
import { curveReading, expectNear } from "../sample-loop.ts";
import { shiftedCycles } from "./sample-cycles.ts";

function found(readings: typeof shiftedCycles) {
  const differences = cycleDifferences(readings);
  if (differences === undefined) throw new Error("nothing was repeated");
  return differences;
}

// R 4.2.2: anova(lm(error ~ group), lm(error ~ group + factor(cycle))), qf, and n by the trace of the design, on the
// readings of sample-cycles.ts. Least squares by another way; 12 digits are left of 16.
const near = 1e-12;

describe("three cycles of eight readings", () => {
  test("mean squares, F and its limit are those of R", () => {
    const { within, between, ratio, ratioLimit, isShown } = found(shiftedCycles);
    expectNear(within.standardDeviation, 0.07175105773237272, near);
    expect(within.degreesOfFreedom).toBe(14);
    expectNear(ratio, 112.7632096196092, 1e-10);
    expectNear(ratioLimit, 3.738891832440735, near);
    expectNear(between.standardDeviation, 0.2681839276459703, near);
    expect(between.degreesOfFreedom).toBe(2);
    expect(isShown).toBe(true);
  });

  test("with two readings missing too", () => {
    const { within, between, ratio, ratioLimit } = found(
      shiftedCycles.filter((_, index) => index !== 4 && index !== 13),
    );
    expectNear(within.standardDeviation, 0.05160418057668826, near);
    expect(within.degreesOfFreedom).toBe(12);
    expectNear(ratio, 175.9319896010529, 1e-9);
    expectNear(ratioLimit, 3.885293834652392, near);
    expectNear(between.standardDeviation, 0.2579707605697074, near);
  });
});

test("two points in two cycles: 0, 1 and 1, 3 give a ratio of 9 with one and one degree of freedom", () => {
  const { ratio, within, isShown } = found([
    curveReading(0, 0, "rising", 1),
    curveReading(1, 1, "rising", 1),
    curveReading(0, 1, "rising", 2),
    curveReading(1, 3, "rising", 2),
  ]);
  expectNear(ratio, 9, near);
  expect(within.degreesOfFreedom).toBe(1);
  expect(isShown).toBe(false);
});

test("cycles that are the same to the last digits differ by nothing", () => {
  const same = shiftedCycles.map((reading, index) => ({ ...reading, error: 0.1 * (index % 8) + 1e-14 * index }));
  expect(found(same)).toMatchObject({ ratio: 0, isShown: false });
});

test("cycles that are shifted and do not scatter at all do differ", () => {
  const shifted = shiftedCycles.map((reading, index) => ({ ...reading, error: 0.1 * (index % 8) + reading.cycle }));
  expect(found(shifted).isShown).toBe(true);
  expectNear(found(shifted).between.standardDeviation, 1, near);
});

test("one cycle, or one point read twice, tells nothing of cycles", () => {
  expect(cycleDifferences(shiftedCycles.filter(({ cycle }) => cycle === 1))).toBeUndefined();
  expect(cycleDifferences([curveReading(0, 1, "rising", 1), curveReading(0, 2, "rising", 2)])).toBeUndefined();
  expect(cycleDifferences([])).toBeUndefined();
});
