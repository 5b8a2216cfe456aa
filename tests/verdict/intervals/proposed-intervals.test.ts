import { describe, expect, test } from "vitest";
import { monthsLater } from "../../../src/analysis/years/next-due.ts";
import type { YearRecord } from "../../../src/assembly/years/over-the-years.ts";
import { type OverTheYearsOptions, overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import { usualIntervalSettings } from "../../../src/verdict/intervals/interval-settings.ts";
import { steadyYears, yearPhase, yearRecord } from "../../assembly/sample-years.ts";

const proposed = (records: readonly YearRecord[], options: OverTheYearsOptions = {}) => overTheYears(records, options)!;

describe("method 1, staircase", () => {
  test("goes up from the stated interval where the last two records were found well inside", () => {
    expect(proposed(steadyYears, { intervalMonths: 12 }).staircase).toEqual({
      reason: "well inside",
      from: 12,
      factor: 1.25,
      months: 15,
      on: "2025-06-04",
      isStated: true,
      days: 364,
      asFound: "pass",
      partOfTolerance: 2.1 / 5,
      wellInside: 4,
    });
  });

  test("stays where only the last one was, or where the one before came too soon or another sensor ended", () => {
    const reasonOf = (records: readonly YearRecord[]) => proposed(records, { intervalMonths: 12 }).staircase?.reason;
    const [, , , before, last] = steadyYears as [YearRecord, YearRecord, YearRecord, YearRecord, YearRecord];
    const narrow = { ...before, asFound: yearPhase([0.3, 4.2, 0.2]) };
    expect(reasonOf([...steadyYears.slice(0, 3), narrow, last])).toBe("well inside, not often enough");
    expect(reasonOf([...steadyYears.slice(0, 2), before, last])).toBe("well inside");
    expect(reasonOf([before, last])).toBe("well inside, not often enough");
    const soon = yearRecord("2023-08-01", [0.4, 1.9, 0.1]);
    expect(reasonOf([...steadyYears.slice(0, 4), soon, yearRecord("2024-08-01", [0.4, 2, 0.1])])).toBe(
      "well inside, not often enough",
    );
    const replaced = yearRecord("2022-09-05", [0.4, 1.2, 0.1], { adjustment: "replace", asLeft: yearPhase([0, 0, 0]) });
    expect(reasonOf([...steadyYears.slice(0, 3), replaced, yearRecord("2023-09-04", [0, 0.2, 0])])).toBe(
      "well inside, not often enough",
    );
  });

  test("where no interval is stated it rests on the months that passed, and says so", () => {
    expect(proposed(steadyYears).staircase).toMatchObject({ from: 12, isStated: false });
  });

  test("goes down where it was found out of tolerance, less far where only just accepted", () => {
    const found = (statement: "conditional fail" | "conditional pass") =>
      proposed(
        [
          ...steadyYears,
          yearRecord("2025-03-03", yearPhase([0, 4.9, 0], statement), {
            adjustment: "re-teach",
            asLeft: yearPhase([0, 0, 0]),
          }),
        ],
        { intervalMonths: 12 },
      );
    expect(found("conditional fail").staircase).toMatchObject({ reason: "out of tolerance", months: 6 });
    expect(found("conditional pass").staircase).toMatchObject({ reason: "only just accepted", months: 9 });
  });

  test.each([
    ["one record alone", [steadyYears[4] as YearRecord], "not enough: one record"],
    [
      "a last record without as found",
      [...steadyYears, yearRecord("2025-03-03", null, { asLeft: yearPhase([0, 0, 0]) })],
      "the last record does not say how the loop was found",
    ],
    [
      "a record before that left it out of tolerance",
      [yearRecord("2024-03-04", yearPhase([0, 6, 0], "fail")), yearRecord("2025-03-03", [0, 0, 0])],
      "the record before did not leave the loop in tolerance",
    ],
    [
      "a last record that left it out of tolerance",
      [...steadyYears, yearRecord("2025-03-03", yearPhase([0, 6, 0], "fail"))],
      "the last record did not leave the loop in tolerance",
    ],
    [
      "a last record that cannot be decided",
      [...steadyYears, yearRecord("2025-03-03", yearPhase([0, 5, 0], "cannot be decided"))],
      "how the loop was found cannot be decided",
    ],
  ] as const)("%s gives no step, and why", (_, records, reason) => {
    const found = proposed(records);
    expect(found.staircase).toBeNull();
    expect(found.notDetermined.staircase).toBe(reason);
  });
});

describe("method 2, control chart", () => {
  test("gives the longest whole months on whose day the band still lies inside", () => {
    const { controlChart, places, leading } = proposed(steadyYears, {
      settings: { ...usualIntervalSettings, mostMonths: 240 },
    });
    const meets = places[leading ?? 0]?.meets?.on ?? "";
    const months = controlChart?.months ?? 0;
    expect(monthsLater("2024-03-04", months) < meets).toBe(true);
    expect(monthsLater("2024-03-04", months + 1) >= meets).toBe(true);
    expect(controlChart?.on).toBe(monthsLater("2024-03-04", months));
    expect(controlChart?.predicted?.high).toBeLessThan(5);
  });

  test("is held by the cap, and says so", () => {
    const settings = { ...usualIntervalSettings, mostMonths: 6 };
    expect(proposed(steadyYears, { settings }).controlChart).toMatchObject({ months: 6, cap: "longest" });
  });

  test("under three records there is none", () => {
    const found = proposed(steadyYears.slice(0, 2));
    expect(found.controlChart).toBeNull();
    expect(found.notDetermined.controlChart).toMatch(/^not enough: two records/u);
  });
});

describe("observed reliability", () => {
  test("counts intervals that began in tolerance: four of four, from 39.8 % (R 4.2.2, binom.test)", () => {
    const { reliability } = proposed(steadyYears);
    expect(reliability).toMatchObject({ inTolerance: 4, of: 4, rate: 1, high: 1 });
    expect(Math.abs((reliability?.low ?? 0) - 0.025 ** (1 / 4))).toBeLessThan(1e-9); // (α/2)^(1/n) where all are
  });

  test("a conditional fail is out, a conditional pass is in, and what is undecided is not in", () => {
    const found = (statement: "conditional fail" | "conditional pass" | "cannot be decided") =>
      proposed([...steadyYears, yearRecord("2025-03-03", yearPhase([0, 5, 0], statement))]).reliability?.inTolerance;
    expect(found("conditional pass")).toBe(5);
    expect(found("conditional fail")).toBe(4);
    expect(found("cannot be decided")).toBe(4);
  });

  test("begins anew with another sensor", () => {
    const replaced = yearRecord("2025-03-03", [0, 2.5, 0], { adjustment: "replace", asLeft: yearPhase([0, 0, 0]) });
    const found = proposed([...steadyYears, replaced, yearRecord("2026-03-02", [0, 0.1, 0])]);
    expect(found.reliability?.of).toBe(1);
    expect(proposed([...steadyYears, replaced]).notDetermined.reliability).toMatch(/^not enough/u);
  });
});
