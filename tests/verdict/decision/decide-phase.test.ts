import { describe, expect, test } from "vitest";
import { analyseReadings } from "../../../src/analysis/readings/analyse-readings.ts";
import type { Loop } from "../../../src/analysis/readings/loop.ts";
import type { Reading } from "../../../src/model/calibration.ts";
import { decidePhase } from "../../../src/verdict/decision/decide-phase.ts";
import { expectNear, loop, reading, rounding } from "../../analysis/sample-loop.ts";
import { frozen } from "../../charts/frozen.ts";

const decided = (readings: readonly Reading[], of: Loop = loop) =>
  decidePhase(analyseReadings(readings, of, "signal"), 100);

test("an error of 1 mm within ±1 mm passes", () => {
  const verdict = decidePhase(
    [
      {
        reading: { calibration: "C-1", phase: "as_found", direction: "rising", reference: 50, signal: 12.16 },
        point: 50,
        cycle: 1,
        tolerance: { low: -1, high: 1 },
        error: { indicated: 51, errorDistance: 1, errorOutput: 0.16, errorPercentSpan: 1 },
        shares: { sensor: 1 },
        isFaultInRange: false,
      },
    ],
    100,
  );
  expect(verdict.overall).toBe("pass");
});

test("one reading outside fails the phase, and only that reading", () => {
  const { readingVerdicts, sensor, overall } = decided([
    reading(0, { signal: 4.1 }),
    reading(50, { signal: 12.17 }),
    reading(100, { signal: 19.84 }),
  ]);
  expect(readingVerdicts).toEqual(["pass", "fail", "pass"]);
  expect([sensor, overall]).toEqual(["fail", "fail"]);
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

describe("the controller is judged on its own", () => {
  test("the worse of the two parts is the verdict", () => {
    const verdict = decided([reading(50, { signal: 12, value: 5.2 })]);
    expect(verdict).toMatchObject({ sensor: "pass", controller: "fail", overall: "fail", readingVerdicts: ["fail"] });
    expect(verdict.worst).toMatchObject({ of: "controller" });
  });

  test("a sensor that is wrong in the sense that the scaling makes good fails all the same", () => {
    expect(decided([reading(50, { signal: 12.32, value: 5 })])).toMatchObject({ sensor: "fail", controller: "pass" });
  });

  test("a value that is wrong fails also where no signal was read", () => {
    const verdict = decided([reading(0, { signal: 4, value: 0 }), reading(50, { value: 9 })]);
    expect(verdict).toMatchObject({ sensor: "pass", controller: "fail", overall: "fail" });
    expect(verdict.readingVerdicts).toEqual(["pass", "fail"]);
  });

  test("without a value there is no verdict of it", () => {
    expect(decided([reading(50, { signal: 12 })]).controller).toEqual({
      notDetermined: "no controller value was read",
    });
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
    expect(decided([])).toMatchObject({ sensor: reason, overall: reason, worst: reason });
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
