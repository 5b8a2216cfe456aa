import { expect, test } from "vitest";
import { pointAtTrueZero } from "../../src/assembly/point-at-true-zero.ts";

const instrument = { rangeLower: 200, rangeUpper: 1200, signalLower: 0, signalUpper: 10 } as Parameters<
  typeof pointAtTrueZero
>[1];
type Phase = Parameters<typeof pointAtTrueZero>[0];

const line = (percentSpan: number) => ({ percentSpan, combinedStandardUncertainty: 0.01 }) as Phase["zeroError"];
const reading = (reference: number, railed?: "low" | "high", changes = {}) =>
  ({
    ...{ point: reference, reference, toleranceLow: -5, toleranceHigh: 5, ...changes },
    ...(railed && { railed, leftOut: "railed" }),
  }) as Phase["readings"][number];
const phase = (readings: Phase["readings"], zero = -0.2, span = 0.1): Phase => ({
  readings,
  zeroError: line(zero),
  spanError: line(span),
});

test("the lower end at no voltage is a test point with the error of the line there, and k = 2", () => {
  const [point, ...others] = pointAtTrueZero(
    phase([reading(200, "low"), reading(200, "low"), reading(700)]),
    instrument,
  );
  expect(others).toEqual([]);
  expect(point).toMatchObject({ point: 200, tolerance: { low: -5, high: 5 } });
  // −0.2 % of 1000 mm, and twice 0.01 % of it.
  expect(point!.errorDistance).toBeCloseTo(-2, 12);
  expect(point!.expandedUncertainty).toBeCloseTo(0.2, 12);
});

test("at the upper end it is zero and span error together; a falling signal has its low end there", () => {
  const falling = { ...instrument, signalLower: 10, signalUpper: 0 };
  const [point] = pointAtTrueZero(phase([reading(1200, "low")]), falling);
  expect(point!.errorDistance).toBeCloseTo(-1, 12);
  expect(point!.expandedUncertainty).toBeCloseTo(2 * Math.hypot(0.1, 0.1), 12);
  expect(pointAtTrueZero(phase([reading(1200, "low")]), instrument)).toEqual([]);
  expect(pointAtTrueZero(phase([reading(200, "high")]), falling)).toEqual([]);
});

test("no point where the line is outside with its uncertainty, not known, or a reading there failed or moved", () => {
  const railed = [reading(200, "low"), reading(200, "low")];
  expect(pointAtTrueZero(phase(railed, -0.485), instrument)).toEqual([]);
  expect(pointAtTrueZero(phase(railed, -0.475), instrument)).toHaveLength(1);
  expect(pointAtTrueZero({ ...phase(railed), zeroError: null }, instrument)).toEqual([]);
  const unknown = { ...line(-0.2), combinedStandardUncertainty: null, standardUncertainty: null } as Phase["zeroError"];
  expect(pointAtTrueZero({ ...phase(railed), zeroError: unknown }, instrument)).toEqual([]);
  const ofFit = { ...unknown!, standardUncertainty: 0.02 };
  const [point] = pointAtTrueZero({ ...phase(railed), zeroError: ofFit }, instrument);
  expect(point!.expandedUncertainty).toBeCloseTo(0.4, 12);
  expect(pointAtTrueZero(phase([...railed, reading(200, "low", { verdict: "fail" })]), instrument)).toEqual([]);
  expect(pointAtTrueZero(phase([...railed, reading(200)]), instrument)).toEqual([]);
});

test("a signal that begins elsewhere can go below its low end", () => {
  for (const [signalLower, signalUpper] of [
    [4, 20],
    [20, 4],
    [-10, 10],
  ] as const)
    expect(pointAtTrueZero(phase([reading(200, "low")]), { ...instrument, signalLower, signalUpper })).toEqual([]);
});

test("a signal that stands at its end farther inside the range says nothing of the end of the range", () => {
  expect(pointAtTrueZero(phase([reading(202, "low")]), instrument)).toEqual([]);
});
