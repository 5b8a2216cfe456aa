import { describe, expect, test } from "vitest";
import { type Figure, isDetermined } from "../../../src/analysis/figures/figure.ts";
import { readingScatter, withoutRounding } from "../../../src/analysis/uncertainty/reading-scatter.ts";
import { curveReading, expectNear } from "../sample-loop.ts";
import { agreeingCycles, shiftedCycles } from "./sample-cycles.ts";

// R 4.2.2, lm, on the readings of sample-cycles.ts; 12 digits are left of 16.
const near = 1e-12;

function determined<Value>(figure: Figure<Value>): Value {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
}

describe("one cycle", () => {
  const first = shiftedCycles.filter(({ cycle }) => cycle === 1);

  test("the residual standard deviation of the line stands for repeats, six degrees of freedom", () => {
    const scatter = determined(readingScatter(first, 0));
    expectNear(scatter.pooledStdDev, 0.08284954809199398, near);
    expect(scatter).toMatchObject({ degreesOfFreedom: 6, isAboutLine: true });
  });

  test("cannot show what cycles differ by: taken as large as the scatter, and said to be assumed", () => {
    const scatter = determined(readingScatter(first, 0.05));
    const { pooledStdDev: standardDeviation, degreesOfFreedom } = scatter;
    expect(scatter.betweenCycles).toEqual({ standardDeviation, degreesOfFreedom, isAssumed: true });
    const twice = [...first, ...first.map((reading) => ({ ...reading, error: reading.error + 0.01 }))];
    const repeated = determined(readingScatter(twice, 0));
    expect(repeated.isAboutLine).toBeUndefined();
    expect(repeated.betweenCycles).toMatchObject({ standardDeviation: repeated.pooledStdDev, isAssumed: true });
    expect(determined(readingScatter(shiftedCycles, 0)).betweenCycles?.isAssumed).toBeUndefined();
  });

  test("less what the steps of a display make of it", () => {
    const scatter = determined(readingScatter(first, 0.05));
    expectNear(scatter.pooledStdDev, Math.sqrt(0.08284954809199398 ** 2 - 0.0025), near);
    expect(scatter.degreesOfFreedom).toBeLessThan(6);
  });

  test("two readings leave nothing", () => {
    expect(readingScatter(first.slice(0, 2), 0)).toEqual({ notDetermined: "one cycle only" });
  });
});

test("three cycles that differ: the scatter within them, and what they differ by", () => {
  const scatter = determined(readingScatter(shiftedCycles, 0));
  expectNear(scatter.pooledStdDev, 0.07175105773237272, near);
  expect(scatter.degreesOfFreedom).toBe(14);
  expectNear(scatter.betweenCycles?.standardDeviation, 0.2681839276459703, near);
  expect(scatter.betweenCycles?.degreesOfFreedom).toBe(2);
  expect(scatter.isAboutLine).toBeUndefined();
});

test("two cycles that are not shown to differ leave the repeatability over √2 open, and no part of a test point", () => {
  const { pooledStdDev, degreesOfFreedom, betweenCycles, leftOpen } = determined(readingScatter(agreeingCycles, 0));
  // R 4.2.2: sigma(lm(error ~ factor(point):direction)), 8 degrees of freedom.
  expectNear(pooledStdDev, 0.029895651857753464, near);
  expect(degreesOfFreedom).toBe(8);
  expect(betweenCycles).toBeUndefined();
  expectNear(leftOpen?.standardDeviation, 0.029895651857753464 / Math.sqrt(2), near);
  expect(leftOpen?.degreesOfFreedom).toBe(8);
});

test("one reading repeated says less than a line through nine", () => {
  const first = shiftedCycles.filter(({ cycle }) => cycle === 1);
  const scatter = determined(readingScatter([...first, curveReading(0, 0.1100001, "rising", 2)], 0));
  expect(scatter.isAboutLine).toBe(true);
  expect(scatter.pooledStdDev).toBeGreaterThan(0.05);
});

describe("scatter that grows with the distance", () => {
  // Three cycles, deviations -1, 0, 1 and 0, 1, -1 … times a size: s is the size at each point.
  const shapes = [
    [-1, 0, 1],
    [0, 1, -1],
    [1, -1, 0],
  ];
  const growing = (sizeAt: (point: number) => number) =>
    [0, 20, 40, 60, 80, 100].flatMap((point, place) =>
      shapes[place % 3]!.map((part, cycle) => curveReading(point, part * sizeAt(point), "rising", cycle + 1)),
    );

  test("each test point has its own", () => {
    const scatter = determined(
      readingScatter(
        growing((point) => 0.01 + point / 1000),
        0,
      ),
    );
    for (const point of [0, 40, 100]) {
      const own = scatter.ofPoints?.get(point);
      expectNear(own?.standardDeviation, 0.01 + point / 1000, near);
      expect(own?.degreesOfFreedom).toBe(2);
    }
  });

  test("where it is everywhere the same, or nearly, the pooled one stands", () => {
    const uneven = [1, 1.2, 0.9, 1.1, 0.8, 1.05];
    expect(
      determined(
        readingScatter(
          growing((point) => uneven[point / 20]!),
          0,
        ),
      ).ofPoints,
    ).toBeUndefined();
    expect(
      determined(
        readingScatter(
          growing(() => 1),
          0,
        ),
      ).ofPoints,
    ).toBeUndefined();
  });
});

test("steps as large as the scatter leave nothing of it, and never the root of a negative number", () => {
  expect(withoutRounding(5, 8, 5)).toEqual({ pooledStdDev: 0, degreesOfFreedom: 8 });
  expect(withoutRounding(5, 8, 3)).toEqual({ pooledStdDev: 4, degreesOfFreedom: 3.2768 });
  expect(withoutRounding(1, 2, 0.99).degreesOfFreedom).toBe(1);
});
