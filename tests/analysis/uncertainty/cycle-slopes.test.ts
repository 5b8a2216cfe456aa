import { describe, expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { cycleSlopes } from "../../../src/analysis/uncertainty/cycle-slopes.ts";
import { zeroAndSpanUncertainty } from "../../../src/analysis/uncertainty/zero-and-span-uncertainty.ts";
import { fitLine } from "../../../src/numeric/fit-line.ts";
import { randomFrom } from "../../computed/loops/random.ts";
import { howMany } from "../../how-many.ts";
import { basis, rail } from "../sample-basis.ts";
import { curveReading, expectNear } from "../sample-loop.ts";
import { shiftedCycles } from "./sample-cycles.ts";

const errors = [
  [11, 14, 22, 19, 28],
  [5, 2, -6, -7, -16],
  [8, 17, 18, 31, 33],
  [-2, 3, 1, 6, 5],
];
const points = [0, 25, 50, 75, 100];
const tilted = errors.flatMap((row, cycle) =>
  row.map((hundredths, place) => curveReading(points[place] as number, hundredths / 100, "rising", cycle + 1)),
);
/** Sums of twenty numbers, summed otherwise: 12 digits are left of 16. */
const near = 1e-12;

describe("four cycles of different slopes, by R 4.2.2: anova of nested lm, and lm of each cycle", () => {
  const found = cycleSlopes(tilted)!;

  test("F and its limit", () => {
    expectNear(found.ratio, 33.55024837600304, 1e-9);
    expectNear(found.ratioLimit, 3.8625483576247648, 1e-9);
    expect(found.isShown).toBe(true);
  });

  test("what the slopes differ by, and the lines at both ends and in the middle", () => {
    expectNear(found.betweenSlopes.standardDeviation, 0.0019457532103418348, near);
    for (const [at, expected] of [
      [0, 0.046499103934018599],
      [50, 0.12443449861049159],
      [100, 0.21848455322974206],
    ] as const)
      expectNear(found.betweenAt(at).standardDeviation, expected, near);
    expect(found.betweenAt(0).degreesOfFreedom).toBe(3);
    expectNear(found.effectAt(2, 100), -0.27649999999999997, near);
  });

  test("zero and span error take it, over the four cycles, and the scatter about the lines", () => {
    const exact = { ...rail, resolution: 0, driftPerYear: 0, relativeUncertainty: 0, expandedUncertainty: 1e-9 };
    const counted = { ...basis, judged: "counts", steps: { reference: 0, output: 0 }, standards: [exact] } as const;
    const both = zeroAndSpanUncertainty(tilted, counted, { rangeLower: 0, rangeUpper: 100 });
    if (!isDetermined(both)) throw new Error(both.notDetermined);
    // R: residual standard deviation of what is left, 12 degrees of freedom; Sxx of the 20 readings is 25000.
    const scatter = 0.025771431211065222;
    expectNear(
      both.span.combined,
      Math.hypot((100 * 0.0019457532103418348) / 2, (100 * scatter) / Math.sqrt(25000)),
      1e-9,
    );
    const ofZero = scatter * Math.sqrt(1 / 20 + 2500 / 25000);
    expectNear(both.zero.combined, Math.hypot(0.046499103934018599 / 2, ofZero), 1e-9);
  });
});

test("cycles that are only shifted have one slope", () => {
  expect(cycleSlopes(shiftedCycles)?.isShown).toBe(false);
});

test("only points that every cycle has once count; one cycle, two points or one distance say nothing", () => {
  expect(cycleSlopes([...tilted, curveReading(60, 9, "rising", 1)])?.ratio).toBe(cycleSlopes(tilted)?.ratio);
  expect(cycleSlopes(tilted.filter(({ cycle }) => cycle === 1))).toBeUndefined();
  expect(cycleSlopes(tilted.filter(({ point }) => point < 40))).toBeUndefined();
  expect(cycleSlopes(tilted.map((reading) => ({ ...reading, reference: 5 })))).toBeUndefined();
});

test("the span error ± 2u holds where each cycle has a gain of its own (draws of five cycles; seeds fixed)", () => {
  const exact = { ...rail, resolution: 0, driftPerYear: 0, relativeUncertainty: 0, expandedUncertainty: 1e-9 };
  const counted = { ...basis, judged: "counts", steps: { reference: 0, output: 0 }, standards: [exact] } as const;
  const draws = howMany(250, 500);
  let held = 0;
  let heldWithout = 0;
  for (let seed = 1; seed <= draws; seed++) {
    const random = randomFrom(seed);
    const readings = [1, 2, 3, 4, 5].flatMap((cycle) => {
      const gain = random.normal(0.002);
      return points.map((point) => curveReading(point, gain * point + random.normal(0.03), "rising", cycle));
    });
    const both = zeroAndSpanUncertainty(readings, counted, { rangeLower: 0, rangeUpper: 100 });
    if (!isDetermined(both)) throw new Error(both.notDetermined);
    const fit = fitLine(
      readings.map(({ reference }) => reference),
      readings.map(({ error }) => error),
    );
    if (Math.abs(100 * fit.slope) <= 2 * both.span.widened) held += 1;
    if (Math.abs(fit.slope) <= 2 * (fit.slopeStdError as number)) heldWithout += 1;
  }
  // 95 %, three standard deviations of 500 draws (1 %) either way, two of 250; the fit alone, as if readings were independent, does not hold.
  expect(held / draws).toBeGreaterThan(0.92);
  expect(held / draws).toBeLessThan(0.98);
  expect(heldWithout / draws).toBeLessThan(0.9);
});
