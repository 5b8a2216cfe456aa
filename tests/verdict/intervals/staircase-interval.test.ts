import { describe, expect, test } from "vitest";
import type { EndedInterval } from "../../../src/verdict/intervals/ended-intervals.ts";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";
import { staircaseInterval } from "../../../src/verdict/intervals/staircase-interval.ts";

type Ended = EndedInterval & { months: number };
const year: Ended = Object.freeze({ asFound: "pass", partOfTolerance: 0.4, months: 12, days: 365 });
/** The step after an interval like this, and one before it that was well inside. */
const step = (changes: Partial<Ended>, settings = usualIntervalSettings) => {
  const { months, ...last } = { ...year, ...changes };
  const before = { asFound: "pass", partOfTolerance: 0.5, days: 40 * months } as const;
  return staircaseInterval([before, last], months, settings);
};

test("found twice with half of the tolerance used or less after twelve months: fifteen", () => {
  expect(step({})).toEqual({ reason: "well inside", from: 12, factor: 1.25, months: 15, wellInside: 2 });
});

describe("the step follows from how the loop was found", () => {
  test("80 % of the tolerance is still well inside, more is not", () => {
    expect(step({ partOfTolerance: 0.8 }).reason).toBe("well inside");
    expect(step({ partOfTolerance: 0.800001 })).toEqual({
      reason: "inside, but not well",
      from: 12,
      factor: 1,
      months: 12,
      wellInside: 0,
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
      wellInside: 0,
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

describe("one good result is not enough for a longer interval", () => {
  const good = { asFound: "pass", partOfTolerance: 0.4, days: 365 } as const;
  const last = (...ended: readonly (EndedInterval | undefined)[]) =>
    staircaseInterval([...ended, good], 12, usualIntervalSettings);

  test.each<[string, readonly (EndedInterval | undefined)[]]>([
    ["nothing", []],
    ["one that did not end", [undefined]],
    ["one not well inside", [{ ...good, partOfTolerance: 0.81 }]],
    ["one outside", [good, { ...good, asFound: "fail" }]],
    ["one only just accepted", [{ ...good, asFound: "conditional pass" }]],
    ["one after half of the interval", [{ ...good, days: 180 }]],
  ])("after %s it stays, and says so", (_, before) => {
    expect(last(...before)).toEqual({
      reason: "well inside, not often enough",
      from: 12,
      factor: 1,
      months: 12,
      wellInside: 1,
    });
  });

  test("how many in a row is a setting; a bad result shortens at once", () => {
    const monthsWith = (extendAfter: number, ...ended: readonly EndedInterval[]) =>
      staircaseInterval([...ended, good], 12, { ...usualIntervalSettings, extendAfter }).months;
    expect(monthsWith(1)).toBe(15);
    expect(monthsWith(3, good)).toBe(12);
    expect(monthsWith(3, good, good)).toBe(15);
    expect(staircaseInterval([good, good, { ...good, asFound: "fail" }], 12, usualIntervalSettings).months).toBe(6);
  });
});
