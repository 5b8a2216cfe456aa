import { describe, expect, test } from "vitest";
import { decidingPoints, endError, worstPointOf } from "../../src/record/loop-end.ts";
import type { JudgedPointRecord } from "../../src/record/record-schema.ts";
import { sampleRecord } from "../charts/sample-record.ts";

const phase = sampleRecord().phases.asFound;
if (phase === undefined) throw new Error("the sample has a phase as found");
const points = phase.points;

/** The same places with another statement, as another stage of the loop gives them. */
const later: JudgedPointRecord[] = points.slice(0, 3).map((point) => ({ ...point, statement: "fail" }));

describe("the points by which a phase is decided", () => {
  test("are the sensor's where nothing behind it was read", () => {
    expect(decidingPoints({ points: [], endOf: "sensor" } as never)).toEqual([]);
    expect(decidingPoints({ points })).toEqual(points);
  });

  test("are those of the end of the loop, and the sensor's where that was not read", () => {
    const deciding = decidingPoints({ points, endPoints: later });
    expect(deciding.map(({ point }) => point)).toEqual(points.map(({ point }) => point));
    expect(deciding.slice(0, 3)).toEqual(later);
    expect(deciding[3]).toBe(points[3]);
  });
});

describe("the point that stands for a phase", () => {
  test("is looked up among the points of the sensor or of the end of the loop", () => {
    expect(worstPointOf({ points, worstPoint: { of: "sensor", index: 3 } })).toBe(points[3]);
    expect(worstPointOf({ points, endPoints: later, worstPoint: { of: "input card", index: 2 } })).toBe(later[2]);
  });

  test("is none where nothing was judged", () => {
    expect(worstPointOf({ points: [], worstPoint: null })).toBeUndefined();
  });
});

test("the error of a reading at the end of the loop is that of the last stage that was read of it", () => {
  expect(endError({ errorDistance: 1, inputCardErrorDistance: -20 })).toEqual({ of: "input card", errorDistance: -20 });
  expect(endError({ errorDistance: 1, wiringErrorDistance: 2 })).toEqual({ of: "wiring", errorDistance: 2 });
  expect(endError({ inputCardErrorDistance: 3, loopErrorDistance: 4 })).toEqual({ of: "controller", errorDistance: 4 });
  expect(endError({ errorDistance: 1 })).toEqual({ of: "sensor", errorDistance: 1 });
  expect(endError({})).toBeUndefined();
});
