import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { type OutputTrip, switchedOutput } from "../../../src/analysis/switching/switched-output.ts";
import { frozen } from "../../charts/frozen.ts";
import { expectNear } from "../sample-loop.ts";

const trip = (direction: OutputTrip["direction"], cycle: number | undefined, reference: number): OutputTrip =>
  frozen({ direction, cycle, reference });

/** Sums of four numbers near 100 are rounded some times at 1.4e-14 each. */
const rounding = 1e-12;

/** By hand: means 100.15 and 104.1; squares of the deviations on approach add up to 0.21. */
const fourCycles = frozen([
  ...[100.2, 99.9, 100.5, 100].map((reference, index) => trip("approach", index + 1, reference)),
  ...[104.1, 104.4, 103.9, 104].map((reference, index) => trip("recede", index + 1, reference)),
]);

function determined<Value>(figure: Value | { notDetermined: string }): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

test("two cycles at 100, 101 and back at 104, 107 have a differential travel of 5", () => {
  const trips = [trip("approach", 1, 100), trip("recede", 1, 104), trip("approach", 2, 101), trip("recede", 2, 107)];
  expect(determined(switchedOutput(trips).differential).distance).toBe(5);
});

describe("four cycles worked by hand", () => {
  const found = switchedOutput(fourCycles);

  test("operating and release distance are the means, with their extremes", () => {
    const operating = determined(found.operating);
    expectNear(operating.mean, 100.15, rounding);
    expect([operating.least, operating.greatest, operating.count]).toEqual([99.9, 100.5, 4]);
    expectNear(determined(operating.standardDeviation), Math.sqrt(0.21 / 3), rounding);
    expectNear(determined(found.release).mean, 104.1, rounding);
  });

  test("differential travel is 3.95, 3.944 % of the operating distance, and 4.5 in the second cycle", () => {
    const { distance, percent, greatestOfOneCycle } = determined(found.differential);
    expectNear(distance, 3.95, rounding);
    expectNear(percent, 395 / 100.15, rounding);
    const greatest = determined(greatestOfOneCycle);
    expectNear(greatest.distance, 4.5, rounding);
    expect(greatest.cycle).toBe(2);
  });

  test("repeat accuracy is the greatest less the least operating distance, 0.6, 0.599 % of the mean", () => {
    const { distance, percent } = determined(found.repeat);
    expectNear(distance, 0.6, rounding);
    expectNear(percent, 60 / 100.15, rounding);
  });

  test("every trip counts and nothing chatters", () => {
    expect(found.isCounted).toEqual(fourCycles.map(() => true));
    expect(found.chatter).toEqual([]);
  });
});

test("of a run with three changes the first counts, and the run is told with their number", () => {
  const trips = [
    trip("approach", 1, 100),
    trip("approach", 1, 99),
    trip("approach", 1, 98),
    trip("recede", 1, 104),
    trip("approach", 2, 100),
  ];
  const found = switchedOutput(trips);
  expect(found.isCounted).toEqual([true, false, false, true, true]);
  expect(determined(found.operating)).toMatchObject({ mean: 100, count: 2, least: 100 });
  expect(found.chatter).toEqual([{ direction: "approach", cycle: 1, transitions: 3 }]);
});

test("on the other side of the datum percentages are of the size of the operating distance", () => {
  const found = switchedOutput([trip("approach", 1, -100), trip("approach", 2, -102), trip("recede", 1, -91)]);
  expect(determined(found.differential)).toMatchObject({ distance: 10, percent: 1000 / 101 });
  expect(determined(found.repeat)).toMatchObject({ distance: 2, percent: 200 / 101 });
});

test("an output that releases nearer than it operates has the same travel: it has no sign", () => {
  const found = switchedOutput([trip("approach", 1, 104), trip("recede", 1, 100)]);
  expect(determined(found.differential)).toMatchObject({ distance: 4, greatestOfOneCycle: { distance: 4, cycle: 1 } });
});

describe("what the trips do not allow is not determined, with its reason", () => {
  test("one direction only", () => {
    const found = switchedOutput([trip("recede", 1, 104)]);
    const none = { notDetermined: "no trip on approach was recorded" };
    expect([found.operating, found.differential, found.repeat]).toEqual([none, none, none]);
    expect(switchedOutput([trip("approach", 1, 100)]).differential).toEqual({
      notDetermined: "no trip on recede was recorded",
    });
  });

  test("one approach", () => {
    const found = switchedOutput([trip("approach", 1, 100), trip("recede", 1, 104)]);
    expect(found.repeat).toEqual({ notDetermined: "one approach only" });
    expect(determined(found.operating).standardDeviation).toEqual({ notDetermined: "one trip on approach only" });
  });

  test("trips without a cycle each count as a run, and nothing is said of chatter or of one cycle", () => {
    const found = switchedOutput([
      trip("approach", undefined, 100),
      trip("approach", undefined, 101),
      trip("recede", 1, 104),
    ]);
    expect(found.isCounted).toEqual([true, true, true]);
    expect(found.chatter).toEqual({ notDetermined: "not every trip names its cycle" });
    expect(determined(found.differential).greatestOfOneCycle).toEqual({
      notDetermined: "no cycle holds an approach and a recede",
    });
  });

  test("no trip at all", () => {
    expect(switchedOutput([]).chatter).toEqual({ notDetermined: "no trip was recorded" });
  });

  test("an operating distance of zero", () => {
    const found = switchedOutput([trip("approach", 1, 0), trip("approach", 2, 0), trip("recede", 1, 4)]);
    const none = { notDetermined: "the operating distance is zero, and nothing is a percentage of it" };
    expect([found.differential, found.repeat]).toEqual([none, none]);
  });
});

test("another unit changes distances by its factor and percentages not at all", () => {
  const distances = fc.array(
    fc.tuple(fc.double({ min: 50, max: 60, noNaN: true }), fc.double({ min: 60, max: 70, noNaN: true })),
    {
      minLength: 2,
      maxLength: 6,
    },
  );
  fc.assert(
    fc.property(distances, fc.constantFrom(0.001, 1 / 25.4, 10), (pairs, factor) => {
      const tripsIn = (unit: number) =>
        pairs.flatMap(([operate, release], index) => [
          trip("approach", index + 1, operate * unit),
          trip("recede", index + 1, release * unit),
        ]);
      const [own, other] = [switchedOutput(tripsIn(1)), switchedOutput(tripsIn(factor))];
      for (const figure of ["differential", "repeat"] as const) {
        const [one, two] = [determined(own[figure]), determined(other[figure])];
        // A difference of numbers below 70, each rounded at 1e-14.
        expectNear(two.percent, one.percent, 1e-10);
        expectNear(two.distance, one.distance * factor, 1e-11 * factor);
      }
    }),
    { seed: 20260317 },
  );
});
