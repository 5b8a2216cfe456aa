import { describe, expect, test } from "vitest";
import { analyseReadings, judgedStage } from "../../../src/analysis/readings/analyse-readings.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { expectNear, loop, reading, rounding, signalLoop } from "../sample-loop.ts";

const only = (taken: Reading) => analyseReadings([taken], loop, "signal")[0]!;

describe("the quantity that a phase is judged by", () => {
  test("counts where no signal was read", () => {
    const stage = judgedStage(
      [{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, counts: 13824 }],
      {
        characteristics: {
          signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 },
          counts: { rangeLower: 0, rangeUpper: 100, outputAtLower: 0, outputAtUpper: 27648 },
        },
        toleranceTerms: [],
        faultLevels: {},
        signalUnit: "mA",
      },
    );
    expect(stage).toBe("counts");
  });

  test.each([
    ["the signal before counts and value", [reading(0, { signal: 4, counts: 0, value: 0 })], "signal"],
    ["the signal though only some readings have it", [reading(0, { value: 0 }), reading(50, { signal: 12 })], "signal"],
    ["the value where nothing else was read", [reading(0, { value: 0 })], "value"],
    [
      "not what only a rejected reading has",
      [reading(0, { signal: 4, rejected: "slipped" }), reading(0, { counts: 0 })],
      "counts",
    ],
    ["what the rejected have where all are rejected", [reading(0, { signal: 4, rejected: "slipped" })], "signal"],
  ] as const)("%s", (_, readings, stage) => {
    expect(judgedStage(readings, loop)).toBe(stage);
  });

  test("nothing where the instrument does not say what the quantity should be", () => {
    expect(judgedStage([reading(0, { counts: 0, value: 0 })], signalLoop)).toBeUndefined();
  });
});

describe("one reading", () => {
  test("12.5 mA at 50 mm of 0 to 100 mm on 4 to 20 mA is 3.125 % of span too much", () => {
    const analysed = analyseReadings(
      [{ calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.5 }],
      {
        characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 4, outputAtUpper: 20 } },
        toleranceTerms: [],
        faultLevels: {},
        signalUnit: "mA",
      },
      "signal",
    );
    expect(analysed[0]?.error?.errorPercentSpan).toBe(3.125);
  });

  test("signal, counts and value give the loop error and its shares, which add up to it", () => {
    const { loopError, shares, leftOut } = only(reading(50, { signal: 12.08, counts: 13962, value: 4.98 }));
    expectNear(loopError?.value, -0.02, rounding);
    expectNear(loopError?.distance, -0.2, rounding);
    expectNear(loopError?.percentSpan, -0.2, rounding);
    expectNear(shares.sensor! + shares.inputCard! + shares.scaling!, loopError!.distance, rounding);
    expect(leftOut).toBeUndefined();
  });

  test("signal and value without counts give the share of both stages between", () => {
    const { shares } = only(reading(50, { signal: 12.16, value: 5.2 }));
    expect(Object.keys(shares)).toEqual(["sensor", "inputCardAndScaling"]);
    expectNear(shares.inputCardAndScaling, 1, rounding);
  });

  test("counts alone are an error against the counts, the value alone against the value", () => {
    const counted = analyseReadings([reading(50, { counts: 13824 })], loop, "counts")[0]!;
    expect(counted.error).toEqual({ indicated: 50, errorDistance: 0, errorOutput: 0, errorPercentSpan: 0 });
    expect(counted.loopError).toBeUndefined();
    const valued = analyseReadings([reading(50, { value: 5.5 })], loop, "value")[0]!;
    expectNear(valued.error?.errorDistance, 5, rounding);
    expectNear(valued.loopError?.distance, 5, rounding);
    expect(valued.shares).toEqual({ sensorToController: valued.loopError?.distance });
  });

  test("a value that the instrument gives no meaning has no loop error", () => {
    const { loopError, shares } = analyseReadings([reading(50, { signal: 12, value: 7 })], signalLoop, "signal")[0]!;
    expect(loopError).toBeUndefined();
    expect(shares).toEqual({ sensor: 0 });
  });
});

describe("what is left out", () => {
  test("a rejected reading, with the reason, which is no fault even at a fault signal", () => {
    expect(only(reading(50, { signal: 3.5, rejected: "target slipped" }))).toMatchObject({
      leftOut: "rejected: target slipped",
      isOutsideAnyway: false,
    });
  });

  test.each([
    [50, 3.6, "fault signal: at or below 3.6 mA", true],
    [50, 21, "fault signal: at or above 21 mA", true],
    [0, 21.5, "fault signal: at or above 21 mA", true],
    [100, 3.5, "fault signal: at or below 3.6 mA", true],
    [-0.1, 3.6, "fault signal: at or below 3.6 mA", false],
    [100.1, 21, "fault signal: at or above 21 mA", false],
  ])("at %d mm a signal of %d mA: %s, in range %s", (reference, signal, leftOut, isOutsideAnyway) => {
    expect(only(reading(reference, { signal }))).toMatchObject({ leftOut, isOutsideAnyway });
  });

  test("a signal beyond the ends that is no fault is not", () => {
    expect(only(reading(0, { signal: 3.8 }))).toMatchObject({ isOutsideAnyway: false });
    expect(only(reading(0, { signal: 3.8 })).leftOut).toBeUndefined();
  });

  test("a reading without the judged quantity, unless a later stage of the loop was read there", () => {
    const countsOnly = only(reading(50, { counts: 13824 }));
    expect(countsOnly.leftOut).toBeUndefined();
    expect(countsOnly.error).toBeUndefined();
    expect(Object.keys(countsOnly.stageErrors)).toEqual(["counts"]);
    const controllerOnly = only(reading(50, { value: 9 }));
    expect(controllerOnly.leftOut).toBeUndefined();
    expect(controllerOnly.error).toBeUndefined();
    expectNear(controllerOnly.loopError?.distance, 40, rounding);
    const unscaled = analyseReadings([reading(50, { value: 9 })], signalLoop, "signal")[0]!;
    expect(unscaled.leftOut).toBe("no signal was read");
  });
});

describe("test points and cycles", () => {
  const places = (...readings: readonly Reading[]) =>
    analyseReadings(readings, loop, "signal").map(({ point, cycle }) => [point, cycle]);

  test("a cycle that is not given is how often the point was read in that direction", () => {
    const falling = { signal: 4, direction: "falling" } as const;
    expect(
      places(reading(0, { signal: 4 }), reading(0, falling), reading(0, { signal: 4 }), reading(0, falling)),
    ).toEqual([
      [0, 1],
      [0, 1],
      [0, 2],
      [0, 2],
    ]);
  });

  test("a cycle that is given stands", () => {
    expect(places(reading(0, { signal: 4, cycle: 3 }), reading(0, { signal: 4, cycle: 1 }))).toEqual([
      [0, 3],
      [0, 1],
    ]);
  });

  test("a rejected reading and the one that replaces it are one cycle", () => {
    expect(places(reading(50, { signal: 9, rejected: "slipped" }), reading(50, { signal: 12 }))).toEqual([
      [50, 1],
      [50, 1],
    ]);
  });

  test("a rejected reading shapes no test point: its reference bridges no gap and moves no mean", () => {
    const [low, , high] = places(
      reading(0, { signal: 4 }),
      reading(1.5, { signal: 4, rejected: "slipped" }),
      reading(3, { signal: 4.48 }),
    );
    expect([low?.[0], high?.[0]]).toEqual([0, 3]);
  });

  test("a rejected reading without a nominal position does not undo those of the others", () => {
    const named = places(
      reading(49, { signal: 12, point: 50 }),
      reading(52, { signal: 12, point: 50 }),
      reading(51, { signal: 12, rejected: "slipped" }),
    );
    expect(named.map(([point]) => point)).toEqual([50, 50, 51]);
  });

  test("the results stand in the order of the readings", () => {
    const taken = [reading(90, { signal: 18 }), reading(10, { signal: 6 }), reading(50, { signal: 12 })];
    expect(analyseReadings(taken, loop, "signal").map((analysed) => analysed.reading)).toEqual(taken);
    expect(analyseReadings([], loop, "signal")).toEqual([]);
  });
});

describe("a signal that stands at an end of what it can say", () => {
  const of = { ...loop, toleranceTerms: [{ basis: "percent of span", plus: 1, minus: 1 }] } as typeof loop;
  /** Eleven points of a sensor with a shift in percent of span, limited as NAMUR NE 43 says. */
  const shifted = (shift: number, places = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]) =>
    analyseReadings(
      places.map((at) => reading(at, { signal: Math.max(3.8, Math.min(20.5, 4 + 0.16 * (at + shift))) })),
      of,
      "signal",
      { reference: 0.01, signal: 0.001 },
    );

  test("is in no figure, and outside where the ideal signal does not stand there", () => {
    const railed = shifted(-5).filter((one) => one.railed !== undefined);
    expect(railed.map(({ point, railed: end, isOutsideAnyway }) => [point, end, isOutsideAnyway])).toEqual([
      [0, "low", true],
    ]);
    expect(railed[0]?.leftOut).toBe(
      "railed: 3.8 mA is the low end of what the signal can say; at or beyond, and no number",
    );
  });

  test("is not outside where the target is beyond the range, and the ideal signal stands there too", () => {
    const railed = shifted(0, [0, 20, 40, 60, 80, 100, 104, 108]).filter((one) => one.railed !== undefined);
    expect(railed.map(({ point, isOutsideAnyway }) => [point, isOutsideAnyway])).toEqual([
      [104, false],
      [108, false],
    ]);
  });

  test("is a number where the line of the others ends there", () => {
    expect(shifted(-1).filter((one) => one.railed !== undefined)).toEqual([]);
  });
});
