import { describe, expect, test } from "vitest";
import type { CalibrationRecord, ReadingRecord } from "../../src/record/record-schema.ts";
import { numberStyleOf, plainNumber } from "../../src/report/number-style.ts";
import { sampleRecord } from "../charts/sample-record.ts";
import { demoRecords } from "./demo-records.ts";

/** A record of one reading with this error and these limits, millimetres, over a range of 1000 mm. */
function withReading(change: Partial<ReadingRecord>, decimals = 0): CalibrationRecord {
  const record = structuredClone(sampleRecord({ phases: ["asFound"] }));
  const phase = record.phases.asFound;
  const [first] = phase?.readings ?? [];
  if (phase === undefined || first === undefined) throw new RangeError("withReading: the sample has no reading");
  phase.readings = [{ ...first, ...change }];
  phase.decimals.reference = decimals;
  return record;
}

describe("the decimals of a page", () => {
  test.each([
    [5, 2, 3],
    [0.5, 3, 4],
    [50, 1, 2],
    [5000, 0, 0],
  ])(
    "a tolerance of ±%d mm is shown with three digits: %d decimals, and %d of the percentage",
    (limit, distance, percent) => {
      const style = numberStyleOf(withReading({ errorDistance: 0, toleranceLow: -limit, toleranceHigh: limit }));
      expect(style.distance).toBe(distance);
      expect(style.percent).toBe(percent);
    },
  );

  test("the tighter side of a two-sided tolerance counts", () => {
    expect(numberStyleOf(withReading({ errorDistance: 0, toleranceLow: -0.5, toleranceHigh: 5 })).distance).toBe(3);
  });

  test("a reference that was typed finer keeps its digits", () => {
    expect(numberStyleOf(withReading({ errorDistance: 0, toleranceLow: -5, toleranceHigh: 5 }, 4)).distance).toBe(4);
  });

  test.each([
    [5.004, 3],
    [5.0004, 4],
    [-5.0004, 4],
    [4.9996, 2],
  ])("an error of %d mm against ±5 mm is printed on its own side of the limit, with %d decimals", (error, decimals) => {
    const style = numberStyleOf(withReading({ errorDistance: error, toleranceLow: -5, toleranceHigh: 5 }));
    expect(style.distance).toBe(decimals);
  });
});

test("in the demo no printed error stands on another side of its printed limit than the number itself", () => {
  let judged = 0;
  for (const record of demoRecords) {
    const { distance } = numberStyleOf(record);
    for (const phase of Object.values(record.phases)) {
      for (const { errorDistance, toleranceHigh } of phase?.readings ?? []) {
        if (errorDistance === undefined) continue;
        judged += 1;
        const isOutsideInPrint =
          Number(Math.abs(errorDistance).toFixed(distance)) > Number(toleranceHigh.toFixed(distance));
        expect(isOutsideInPrint).toBe(Math.abs(errorDistance) > toleranceHigh * (1 + 1e-12));
      }
    }
  }
  expect(judged).toBeGreaterThan(290);
});

test.each([
  [1800, "1800"],
  [0.1 + 0.2, "0.3"],
  [-4, "−4"],
  [1e-7, "0.000000100000"],
  [27648, "27648"],
  [1e21, "1000000000000000000000"],
])("%d as a constant of a formula is %s", (value, written) => {
  expect(plainNumber(value)).toBe(written);
});
