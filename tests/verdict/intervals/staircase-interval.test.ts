import { describe, expect, test } from "vitest";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";
import { type EndedInterval, staircaseInterval } from "../../../src/verdict/intervals/staircase-interval.ts";

const year: EndedInterval = Object.freeze({ asFound: "pass", partOfTolerance: 0.4, months: 12, days: 365 });
const step = (changes: Partial<EndedInterval>, settings = usualIntervalSettings) =>
  staircaseInterval({ ...year, ...changes }, settings);

test("found with 40 % of the tolerance used after twelve months: fifteen", () => {
  expect(step({})).toEqual({ reason: "well inside", from: 12, factor: 1.25, months: 15 });
});

describe("the step follows from how the loop was found", () => {
  test("80 % of the tolerance is still well inside, more is not", () => {
    expect(step({ partOfTolerance: 0.8 }).reason).toBe("well inside");
    expect(step({ partOfTolerance: 0.800001 })).toEqual({
      reason: "inside, but not well",
      from: 12,
      factor: 1,
      months: 12,
    });
  });

  test("out of tolerance, also conditionally, and what cannot be decided halve it", () => {
    for (const asFound of ["fail", "conditional fail", "cannot be decided"] as const) {
      expect(step({ asFound, partOfTolerance: 0.1 })).toMatchObject({ reason: "out of tolerance", months: 6 });
    }
  });

  test("only just accepted shortens it less, whatever part was used", () => {
    expect(step({ asFound: "conditional pass" })).toEqual({
      reason: "only just accepted",
      from: 12,
      factor: 0.8,
      months: 9,
    });
  });

  test("a good result before the interval had passed says nothing of a longer one", () => {
    expect(step({ days: 328 }).reason).toBe("calibrated early"); // 0.9 · 12 months are 328.7 days
    expect(step({ days: 329 }).reason).toBe("well inside");
    expect(step({ days: 10, asFound: "fail" }).reason).toBe("out of tolerance");
  });

  test("where no test point was judged it stays", () => {
    expect(step({ partOfTolerance: null })).toMatchObject({ reason: "no test point judged", months: 12 });
  });
});

describe("caps hold the step and never turn it round", () => {
  test.each([
    [36, 36],
    [30, 36],
    [48, 48],
  ])("from %d months up to %d", (from, to) => {
    expect(step({ months: from, days: 2000 }).months).toBe(to);
  });

  test("down to the least", () => {
    expect(step({ months: 1, asFound: "fail" }).months).toBe(1);
    expect(step({ months: 12, asFound: "fail" }, { ...usualIntervalSettings, leastMonths: 9 }).months).toBe(9);
    expect(step({ months: 6, asFound: "fail" }, { ...usualIntervalSettings, leastMonths: 9 }).months).toBe(6);
  });
});

test("whole months are rounded down, and a product that is a whole number stays one", () => {
  expect(step({ months: 7 }).months).toBe(8); // 8.75
  expect(step({ months: 100, asFound: "fail" }, { ...usualIntervalSettings, shortenBy: 0.29 }).months).toBe(29);
});
