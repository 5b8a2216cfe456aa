import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CalibrationRecord, ReadingRecord } from "../../../src/record/record-schema.ts";
import { numberStyleOf, percentDecimals } from "../../../src/report/style/number-style.ts";
import { writeFixed } from "../../../src/units/write-number.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { howMany } from "../../how-many.ts";
import { demoRecords } from "../demo-records.ts";

const sample = withOneReading(sampleRecord({ phases: ["asFound"] }));

/** The rest would be copied thousands of times. */
function withOneReading(record: CalibrationRecord): CalibrationRecord {
  const [first] = record.phases.asFound?.readings ?? [];
  if (record.phases.asFound === undefined || first === undefined) throw new RangeError("the sample has no reading");
  const { readings: _, ...inputs } = record.inputs.rows;
  return {
    ...record,
    inputs: { ...record.inputs, rows: { ...inputs, readings: [] } },
    phases: { asFound: { ...record.phases.asFound, readings: [first], points: [] } },
  };
}

/** A record of one reading with this error and these limits, millimetres, over a range of 1000 mm. */
function withReading(change: Partial<ReadingRecord>, decimals = 0): CalibrationRecord {
  const record = structuredClone(sample);
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
    [5000, 0, 1],
  ])(
    "a tolerance of ±%d mm is shown with three digits: %d decimals, and the percentage of 1000 mm with %d, no finer",
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

test.each([
  [2700, 1, 2],
  [1800, 2, 3],
  [1000, 2, 3],
  [1000, 0, 1],
  [7.6, 4, 2],
  [50, 2, 1],
  [10, 0, 0],
  [100, 1, 1],
])("over a span of %d, a distance with %d decimals supports a percentage with %d", (span, distance, percent) => {
  expect(percentDecimals(distance, span)).toBe(percent);
});

test("a tolerance stated in percent has the error beside it on its own side too, and the distance follows", () => {
  // 13.51 mm of 2700 mm is 0.50037 %: three decimals would print 0.500 beside ±0.5 %.
  const record = withReading({ errorDistance: 13.51, toleranceLow: -13.5, toleranceHigh: 13.5 });
  const { rangeLower } = record.instrument;
  Object.assign(record.instrument, {
    rangeUpper: rangeLower + 2700,
    tolerance: 0.5,
    toleranceBasis: "percent of span",
  });
  expect(numberStyleOf(record)).toMatchObject({ distance: 3, percent: 4 });
  expect((13.51 / 27).toFixed(4)).toBe("0.5004");
});

test("no printed error looks inside a limit that it is outside of, or the other way, and no percentage is finer than its distance", () => {
  const lowest = fc.constantFrom(0, 20, 1e4);
  const loop = fc.record({
    lower: lowest,
    span: fc.integer({ min: 5, max: 20_000 }),
    percent: fc.integer({ min: 1, max: 500 }).map((hundredths) => hundredths / 100),
    typed: fc.integer({ min: 0, max: 3 }),
    // A part of the tolerance beyond the limit, from half of it to what the decision just tells apart.
    beyond: fc.array(
      fc.record({
        places: fc.integer({ min: 1, max: 9 }),
        digit: fc.integer({ min: -5, max: 5 }),
        sign: fc.constantFrom(-1, 1),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  });
  let close = 0;
  const numRuns = howMany(300, 1000);
  fc.assert(
    fc.property(loop, ({ lower, span, percent, typed, beyond }) => {
      const limit = (span * percent) / 100;
      const errors = beyond.map(({ places, digit, sign }) => sign * limit * (1 + digit * 10 ** -places));
      // What lies so close that storing it may decide is told apart by nothing that is printed.
      fc.pre(beyond.every(({ places, digit }) => digit === 0 || 10 ** -places * limit > 1e-11 * (lower + span)));
      const record = withReading({ toleranceLow: -limit, toleranceHigh: limit }, typed);
      const [first] = record.phases.asFound!.readings;
      record.phases.asFound!.readings = errors.map((errorDistance) => ({ ...first!, errorDistance }));
      const stated = { tolerance: percent, toleranceBasis: "percent of span" } as const;
      Object.assign(record.instrument, { rangeLower: lower, rangeUpper: lower + span, ...stated });
      const style = numberStyleOf(record);
      expect(10 ** -style.percent).toBeGreaterThanOrEqual(((100 * 10 ** -style.distance) / span) * (1 - 1e-8));
      for (const [index, error] of errors.entries()) {
        const isOutside = beyond[index]!.digit > 0;
        const printed = Number(writeFixed(Math.abs(error), style.distance));
        expect(printed > Number(writeFixed(limit, style.distance)), `${error} of ${limit}`).toBe(isOutside);
        const printedPercent = Number(writeFixed(Math.abs((100 * error) / span), style.percent));
        expect(printedPercent > percent, `${error} of ${limit}`).toBe(isOutside);
        close += beyond[index]!.places > 4 ? 1 : 0;
      }
    }),
    { numRuns, seed: 20_260_304 },
  );
  expect(close).toBeGreaterThan(numRuns / 2);
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
          Number(writeFixed(Math.abs(errorDistance), distance)) > Number(writeFixed(toleranceHigh, distance));
        expect(isOutsideInPrint).toBe(Math.abs(errorDistance) > toleranceHigh * (1 + 1e-12));
      }
    }
  }
  expect(judged).toBeGreaterThan(290);
});
