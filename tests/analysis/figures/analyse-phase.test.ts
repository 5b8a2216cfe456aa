import { describe, expect, test } from "vitest";
import { analysePhase, type PhaseAnalysis } from "../../../src/analysis/figures/analyse-phase.ts";
import { type Figure, isDetermined } from "../../../src/analysis/figures/figure.ts";
import { copyWords } from "../../../src/analysis/readings/analyse-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { expectNear, loop, reading, rounding, signalLoop } from "../sample-loop.ts";

const determined = <Value>(figure: Figure<Value>): Value => {
  if (!isDetermined(figure)) throw new Error(figure.notDetermined);
  return figure;
};

const analysed = (readings: readonly Reading[], of = loop): PhaseAnalysis => determined(analysePhase(readings, of));

const signals = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([reference, signal]) => reading(reference, { signal }));

test("12.5 mA at 50 mm of 0 to 100 mm on 4 to 20 mA: 3.125 % of span at 50, rising", () => {
  const analysis = determined(
    analysePhase([{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.5 }], {
      characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
      toleranceTerms: [],
      faultLevels: {},
      signalUnit: "mA",
    }),
  );
  expect(analysis.figures.maximumMeasuredError).toEqual({ percentSpan: 3.125, point: 50, direction: "rising" });
});

test("nothing can be judged where what was read has no ideal line", () => {
  const reason = "the instrument does not say what the quantity that was read should be at its range ends";
  expect(analysePhase([reading(50, { counts: 13824 })], signalLoop)).toEqual({ notDetermined: reason });
});

describe("the data decide which figures there are", () => {
  const reasons = (readings: readonly Reading[]) =>
    Object.fromEntries(
      Object.entries({ ...analysed(readings), ...analysed(readings).figures }).flatMap(([name, figure]) =>
        typeof figure === "object" && "notDetermined" in figure ? [[name, figure.notDetermined]] : [],
      ),
    );
  const oneWay = {
    hysteresis: "no test point was read in both directions",
    hysteresisWithinOneCycle: "no cycle has a test point that was read in both directions",
    repeatability: "one cycle only",
    greatestLoopError: "no controller value was read",
  };

  test("one point", () => {
    expect(reasons(signals([50, 12]))).toEqual({
      ...oneWay,
      fit: "fewer than two reference distances",
      zeroAndSpan: "fewer than two reference distances",
      linearity: "fewer than three test points",
    });
  });

  test("two points", () => {
    expect(reasons(signals([0, 4], [100, 20]))).toEqual({ ...oneWay, linearity: "fewer than three test points" });
  });

  test("one cycle in one direction", () => {
    expect(reasons(signals([0, 4], [50, 12], [100, 20]))).toEqual(oneWay);
  });

  test("two cycles, two directions and the controller: every figure", () => {
    const ways = ["rising", "falling", "rising", "falling"] as const;
    const readings = ways.flatMap((direction, run) =>
      [0, 50, 100].map((reference) => reading(reference, { direction, signal: 4 + run / 100, value: 0 })),
    );
    expect(reasons(readings)).toEqual({});
    expect(analysed(readings).cycles).toBe(2);
  });

  test("a row that stands twice in the only cycle makes no cycles of copies", () => {
    const readings = [0, 50, 100, 100].map((reference) =>
      reading(reference, { cycle: 1, direction: "rising", signal: 4 }),
    );
    expect(reasons(readings).repeatability).toBe("one cycle only");
  });

  test("a cycle that repeats another to the last digit repeats nothing", () => {
    const ways = ["rising", "falling", "rising", "falling"] as const;
    const readings = ways.flatMap((direction) =>
      [0, 50, 100].map((reference) => {
        // Digits so fine that out and back differ: a coarse display would repeat whole cycles by itself.
        return reading(reference, { direction, signal: direction === "rising" ? 4 : 4.013 });
      }),
    );
    expect(reasons(readings).repeatability).toBe("the cycles are copies");
    expect(analysed(readings).cycles).toBe(1);
    expect(analysed(readings).readings.filter(({ leftOut }) => leftOut === copyWords)).toHaveLength(6);
  });

  test("all readings rejected", () => {
    const rejected = [0, 50, 100].map((reference) => reading(reference, { signal: 4, rejected: "slipped" }));
    expect(Object.values(reasons(rejected))).toContain("no usable reading");
    expect(analysed(rejected)).toMatchObject({ curve: [], cycles: 0 });
  });
});

test("left-out readings are in no figure", () => {
  const good = signals([0, 4.016], [50, 12.016], [100, 20.016]);
  const bad = [reading(50, { signal: 3.5 }), reading(50, { signal: 19, rejected: "slipped" })];
  const { readings, ...figures } = analysed([...good, ...bad]);
  const { readings: _, ...expected } = analysed(good);
  expect(figures).toEqual(expected);
  expect(readings).toHaveLength(5);
});

test("the fit is of the judged quantity on the reference: 0.16 mA/mm from 4 mA", () => {
  const { slope, intercept } = determined(analysed(signals([0, 4], [50, 12], [100, 20])).fit);
  expectNear(slope, 0.16, 1e-16);
  expectNear(intercept, 4, 1e-15);
  const counted = analysed([reading(0, { counts: 0 }), reading(100, { counts: 27648 })]);
  expectNear(determined(counted.fit).slope, 276.48, rounding);
  expect(counted.judged).toBe("counts");
});

test("the greatest loop error is the farthest from 0, also where no signal was read", () => {
  const phase = [
    reading(0, { signal: 4, value: 0.03 }),
    reading(50, { value: 4.9 }),
    reading(100, { signal: 20, value: 10.05 }),
    reading(100, { signal: 20, value: 99, rejected: "slipped" }),
  ];
  expectNear(determined(analysed(phase).greatestLoopError).loopError?.distance, -1, rounding);
});

test("a loop error of exactly 0 is a figure, and the first of equals", () => {
  const phase = [reading(0, { signal: 4, value: 0 }), reading(100, { signal: 20, value: 10 })];
  expect(determined(analysed(phase).greatestLoopError).reading.reference).toBe(0);
});

test("test points that all stand at one reference give no linearity and no fault", () => {
  const phase = [0, 50, 100].map((point) => reading(50, { signal: 12, point }));
  expect(analysed(phase).linearity).toHaveProperty("notDetermined");
  expect(analysed(phase).fit).toHaveProperty("notDetermined");
});
