import { describe, expect, test } from "vitest";
import { analyseReadings } from "../../../src/analysis/readings/analyse-readings.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import type { Statement } from "../../../src/model/statement.ts";
import { decidePhase, type PhaseVerdict } from "../../../src/verdict/decision/decide-phase.ts";
import { expectNear, loop, reading, rounding } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";

const decided = (readings: readonly Reading[], of: Loop = loop) =>
  withParts(decidePhase({ readings: analyseReadings(readings, of, "signal"), judged: "signal", magnitude: 100 }));

const withParts = (verdict: PhaseVerdict) => ({ ...verdict, ...Object.fromEntries(verdict.parts) });

test("an error of 1 mm within ±1 mm passes", () => {
  const verdict = decidePhase({
    readings: [
      {
        reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
        point: 50,
        cycle: 1,
        tolerance: { low: -1, high: 1 },
        stageErrors: { signal: { distance: 1, percentSpan: 1 } },
        shares: { sensor: 1 },
        isOutsideAnyway: false,
      },
    ],
    magnitude: 100,
    judged: "signal",
  });
  expect(verdict.overall).toBe("pass");
});

test("one reading outside fails the phase, and only that reading", () => {
  const { readingVerdicts, parts, overall } = decided([
    reading(0, { signal: 4.1 }),
    reading(50, { signal: 12.17 }),
    reading(100, { signal: 19.84 }),
  ]);
  expect(readingVerdicts).toEqual(["pass", "fail", "pass"]);
  expect([parts.get("sensor"), overall]).toEqual(["fail", "fail"]);
});

test("a signal that is exactly on the limit as typed passes, on both sides and on a reverse-acting loop", () => {
  expect(decided([reading(50, { signal: 12.16 }), reading(30, { signal: 8.64 })]).overall).toBe("pass");
  const reverse: Loop = frozen({
    ...loop,
    characteristics: { signal: { rangeLower: 0, rangeUpper: 100, outputAtLower: 20, outputAtUpper: 4 } },
  });
  expect(decided([reading(50, { signal: 11.84 }), reading(30, { signal: 15.36 })], reverse).overall).toBe("pass");
  expect(decided([reading(50, { signal: 11.83 })], reverse).overall).toBe("fail");
});

test("each side has its own limit", () => {
  const twoSided: Loop = frozen({ ...loop, toleranceTerms: [{ basis: "distance", plus: 1, minus: 2 }] } as const);
  expect(decided([reading(50, { signal: 11.68 })], twoSided).overall).toBe("pass");
  expect(decided([reading(50, { signal: 12.2 })], twoSided).overall).toBe("fail");
});

describe("the loop is judged where it ends, and every stage before it keeps its own word", () => {
  test("a controller that makes something wrong of a right signal fails the loop", () => {
    const verdict = decided([reading(50, { signal: 12, value: 5.2 })]);
    expect(verdict).toMatchObject({ sensor: "pass", controller: "fail", overall: "fail", readingVerdicts: ["fail"] });
    expect(verdict.worst).toMatchObject({ of: "controller" });
  });

  test("a sensor that is wrong in the sense that the scaling makes good: the sensor fails, the loop does not", () => {
    const verdict = decided([reading(50, { signal: 12.32, value: 5 })]);
    expect(verdict).toMatchObject({ sensor: "fail", controller: "pass", overall: "pass", end: "controller" });
    expect(verdict.readingVerdicts).toEqual(["pass"]);
  });

  test("raw counts that are wrong fail the loop where no controller value was read", () => {
    const verdict = decided([reading(50, { signal: 12, counts: 13000 })]);
    expect(verdict).toMatchObject({ sensor: "pass", "input card": "fail", overall: "fail", end: "input card" });
    expect(verdict.worst).toMatchObject({ of: "input card" });
  });

  test("so does the signal at the card, and what nobody read there is judged at the sensor", () => {
    const verdict = decided([reading(50, { signal: 12, signalAtCard: 11.5 }), reading(0, { signal: 5 })]);
    expect(verdict).toMatchObject({ sensor: "fail", wiring: "fail", overall: "fail", end: "wiring" });
    expect(verdict.readingVerdicts).toEqual(["fail", "fail"]);
    expect(decided([reading(50, { signal: 12, signalAtCard: 12 }), reading(0, { signal: 5 })]).overall).toBe("fail");
  });

  test("under a rule of test points each is decided by the last stage that was read there", () => {
    const phase = { readings: [], judged: "signal", magnitude: 100 } as const;
    const at = (point: number, statement: Statement) => ({ point, statement });
    const points = new Map([
      ["signal", [at(0, "fail"), at(50, "conditional pass"), at(100, "pass")]],
      ["counts", [at(0, "pass"), at(100, "pass")]],
    ] as const);
    expect(decidePhase(phase, points).overall).toBe("conditional pass");
  });

  test("a value that is wrong fails also where no signal was read", () => {
    const verdict = decided([reading(0, { signal: 4, value: 0 }), reading(50, { value: 9 })]);
    expect(verdict).toMatchObject({ sensor: "pass", controller: "fail", overall: "fail" });
    expect(verdict.readingVerdicts).toEqual(["pass", "fail"]);
  });

  test("without a value there is no verdict of it", () => {
    expect(decided([reading(50, { signal: 12 })]).parts.has("controller")).toBe(false);
  });
});

describe("readings that are left out", () => {
  test("a fault signal inside the range fails, outside it is not judged", () => {
    const verdict = decided([reading(50, { signal: 3.5 }), reading(110, { signal: 21.5 })]);
    expect(verdict.readingVerdicts).toEqual(["fail", undefined]);
    expect(verdict.overall).toBe("fail");
    expect(verdict.worst).toEqual({ notDetermined: "no usable reading" });
  });

  test("a rejected reading is not judged, neither its signal nor its value", () => {
    const rejected = reading(50, { signal: 20, value: 9, rejected: "slipped" });
    expect(decided([rejected, reading(0, { signal: 4 })])).toMatchObject({
      readingVerdicts: [undefined, "pass"],
      overall: "pass",
    });
  });

  test("nothing usable gives no verdict", () => {
    const reason = { notDetermined: "no usable reading" };
    expect(decided([])).toMatchObject({ parts: new Map(), overall: reason, worst: reason });
    expect(decided([reading(0, { signal: 9, rejected: "slipped" })])).toMatchObject({ overall: reason });
  });
});

describe("the worst reading", () => {
  test("is the one that takes the greatest part of the tolerance on its side", () => {
    const twoSided: Loop = frozen({ ...loop, toleranceTerms: [{ basis: "distance", plus: 4, minus: 1 }] } as const);
    const { worst } = decided([reading(30, { signal: 9.12 }), reading(50, { signal: 11.872 })], twoSided);
    expect(worst).toMatchObject({ of: "sensor", reading: { reading: { reference: 50 } } });
    if (!("partOfTolerance" in worst)) throw new Error("no worst reading");
    expectNear(worst.partOfTolerance, 0.8, rounding);
    expectNear(worst.errorDistance, -0.8, rounding);
  });

  const ofReading: Loop = frozen({
    ...loop,
    toleranceTerms: [{ basis: "percent of reading", plus: 1, minus: 1 }],
  } as const);

  test("at a reference of 0, where percent of reading allows nothing, has no part of the tolerance, and fails", () => {
    const verdict = decided([reading(0, { signal: 4.001 }), reading(100, { signal: 20.32 })], ofReading);
    expect(verdict.readingVerdicts).toEqual(["fail", "fail"]);
    expect(verdict.worst).toMatchObject({ reading: { reading: { reference: 0 } }, partOfTolerance: null });
  });

  test("an exact reading there passes and takes no part of it", () => {
    const verdict = decided([reading(0, { signal: 4 })], ofReading);
    expect(verdict).toMatchObject({ overall: "pass", worst: { partOfTolerance: 0 } });
  });
});
