import { describe, expect, test } from "vitest";
import { type DriftLine, driftLine, predictedError } from "../../../src/analysis/years/drift-line.ts";
import { limitCrossing } from "../../../src/analysis/years/limit-crossing.ts";

/** Records a year of 365.25 days apart, in whole days. */
const lineOf = (...errors: readonly number[]) =>
  driftLine(errors.map((error, year) => ({ day: Math.round(365.25 * year), error }))) as DriftLine;
const limits = (high: number, low = -high) => ({ low, high });

describe("without any scatter the band is the line", () => {
  const line = driftLine([0, 1, 2, 3].map((year) => ({ day: 365.25 * year, error: year }))) as DriftLine;

  test("a millimetre a year meets 10 mm in the eleventh year, on the first whole day beyond", () => {
    expect(limitCrossing(line, limits(10), 1096)).toEqual({ day: 3653, limit: "upper", isAlready: false });
  });

  test("downwards it is the lower limit", () => {
    const down = driftLine([0, 1, 2, 3].map((year) => ({ day: 365.25 * year, error: -year }))) as DriftLine;
    expect(limitCrossing(down, limits(10), 1096)).toEqual({ day: 3653, limit: "lower", isAlready: false });
  });
});

test("the day is the first on which the band lies on a limit or beyond, found day by day", () => {
  for (const errors of [
    [0, 0.9, 2.2, 2.8],
    [0.5, -0.7, -1.1, -2.4, -2.6],
    [0.1, -0.1, 0.1, -0.1, 0.15, -0.12],
  ]) {
    const line = lineOf(...errors);
    const start = line.lastDay;
    const isBeyond = (day: number) => predictedError(line, day).high >= 5 || predictedError(line, day).low <= -5;
    let day = start;
    while (day - start < 7305 && !isBeyond(day)) day += 1;
    expect(limitCrossing(line, limits(5), start)?.day).toBe(isBeyond(day) ? day : undefined);
  }
});

test("of two limits the one that is met first", () => {
  const line = lineOf(0, 0.9, 2.2, 2.8);
  expect(limitCrossing(line, limits(12, -3), line.lastDay)?.limit).toBe("upper");
  expect(limitCrossing(lineOf(0.3, -0.3, 0.3, -0.3), limits(50, -3), 1096)?.limit).toBe("lower");
});

test("a band that lies beyond a limit already says so, with the day from which it is followed", () => {
  const line = lineOf(0, 1, 2.1);
  expect(limitCrossing(line, limits(2), line.lastDay)).toEqual({ day: line.lastDay, limit: "upper", isAlready: true });
});

test("nothing is met within 20 years where the drift is slow, and one day fewer decides", () => {
  const line = driftLine([0, 1, 2, 3].map((year) => ({ day: 365.25 * year, error: year }))) as DriftLine;
  // From day 0 the horizon is day 7305, where the line stands at 20.
  expect(limitCrossing(line, limits(20), 0)?.day).toBe(7305);
  expect(limitCrossing(line, limits(20.001), 0)).toBeUndefined();
});
