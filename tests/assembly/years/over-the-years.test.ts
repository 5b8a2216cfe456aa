import { describe, expect, test } from "vitest";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import { driftLine } from "../../../src/analysis/years/drift-line.ts";
import type { YearRecord } from "../../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import type { Instrument } from "../../../src/model/instrument.ts";
import { overTheYearsSchema } from "../../../src/record/over-the-years-schema.ts";
import { steadyYears, yearPhase, yearRecord } from "../sample-years.ts";

const years = (records: readonly YearRecord[]) => overTheYears(Object.freeze(records))!;
const leadingOf = (records: readonly YearRecord[]) => {
  const found = years(records);
  return found.leading === null ? undefined : found.places[found.leading];
};

/** 0.8 % of reading or 4 mm: from 500 mm on it grows, below it stands still; a line through 500 and 1000 mm says 0 at 0. */
const instrument: Instrument = Object.freeze({
  ...{ tag: "LT-1", rangeLower: 0, rangeUpper: 1000, distanceUnit: "mm" },
  ...{ signalLower: 4, signalUpper: 20, signalUnit: "mA" },
  ...{ tolerance: 0.8, toleranceBasis: "percent of reading", secondTolerance: 4, secondToleranceBasis: "distance" },
});

test.each([
  ["sum", 4, 12],
  ["greater", 4, 8],
  ["less", 0, 4],
] as const)(
  "at the ends of the range the limits are those of the row, whichever is the %s",
  (combined, lower, upper) => {
    const found = overTheYears(steadyYears, { instrument: { ...instrument, toleranceCombined: combined } })!;
    const ends = found.places.filter(({ kind }) => kind !== "test point");
    expect(ends.map(({ toleranceLow, toleranceHigh }) => [toleranceLow, toleranceHigh])).toEqual([
      [lower === 0 ? 0 : -lower, lower],
      [-upper, upper],
    ]);
  },
);

test("without the instrument's row nothing is said of the ends of the range", () => {
  expect(years(steadyYears).places.every(({ kind }) => kind === "test point")).toBe(true);
});

test("one record is not enough, and says so", () => {
  const found = years([yearRecord("2024-03-04", [0.1, 0.2, 0.3])]);
  expect(found.places[0]?.notDetermined.drift).toBe("not enough: one record");
  expect(found.band).toEqual([]);
  expect(found.places.every(({ drift, meets }) => drift === null && meets === null)).toBe(true);
});

describe("five years without a touch after a re-teach", () => {
  test("are led by the test point whose forecast meets its limit first, drift fitted from the as-left on", () => {
    const leading = leadingOf(steadyYears);
    const expected = driftLine(
      [0.2, 0.8, 1.1, 1.8, 2.1].map((error, index) => ({
        day: dayNumber(steadyYears[index]?.performedOn ?? ""),
        error,
      })),
    );
    expect(leading).toMatchObject({ kind: "test point", distance: 500, records: 5 });
    expect("perYear" in expected && leading?.drift?.perYear).toBe("perYear" in expected && expected.perYear.value);
    expect(leading?.meets?.limit).toBe("upper");
    const days = years(steadyYears).places.flatMap(({ kind, meets }) =>
      kind === "test point" && meets ? [meets.on] : [],
    );
    expect(leading?.meets?.on).toBe(days.toSorted()[0]);
  });

  test("show the errors of each record at that point, and the change since the record before", () => {
    const { records } = years(steadyYears);
    expect(records.map(({ asFound }) => asFound?.point?.errorDistance)).toEqual([4.4, 0.8, 1.1, 1.8, 2.1]);
    expect(records[0]).toMatchObject({ isAdjusted: true, change: null, asLeft: { point: { errorDistance: 0.2 } } });
    // From the as-left 0.2 of 2020-03-02 to the as-found 0.8 of 2021-03-01, 364 days.
    expect(records[1]?.change?.errorDistance).toBe(0.8 - 0.2);
    expect(records[1]?.change?.expandedUncertainty).toBe(Math.hypot(0.4, 0.4));
    expect(records[1]?.change?.perYear).toBe((0.8 - 0.2) / (364 / 365.25));
  });

  test("have a band from the first day of the line past the day on which it meets the limit", () => {
    const { band, places, leading } = years(steadyYears);
    expect(band[0]?.on).toBe("2020-03-02");
    expect((band.at(-1)?.on ?? "") > (places[leading ?? 0]?.meets?.on ?? "9")).toBe(true);
    expect(band.every(({ low, value, high }) => low < value && value < high)).toBe(true);
  });

  test("are data of the published form", () => {
    expect(overTheYearsSchema.parse(years(steadyYears))).toEqual(years(steadyYears));
  });
});

describe("an adjustment breaks the line", () => {
  const repaired = yearRecord("2025-03-03", [0.5, 2.6, 0.2], { adjustment: "repair", asLeft: yearPhase([0, 0, 0]) });

  test("one result since then is not enough, whatever came before", () => {
    const leading = leadingOf([...steadyYears, repaired]);
    expect(leading).toMatchObject({ drift: null, records: 1 });
    expect(leading?.notDetermined.drift).toMatch(/^not enough: one record/u);
  });

  test("what was found at the adjustment belongs to the line before", () => {
    const after = ["2026-03-02", "2027-03-01"].map((day, index) => yearRecord(day, [0, 0.1 * (index + 1), 0]));
    const leading = leadingOf([...steadyYears, repaired, ...after]);
    expect(leading?.records).toBe(3);
    expect(Math.abs((leading?.drift?.perYear ?? 9) - 0.1)).toBeLessThan(0.001); // years of 364 and 728 days
  });
});

describe("records that are not taken are told", () => {
  test("those of another range or unit with all before them, and those without a day", () => {
    const found = years([
      yearRecord("2018-01-01", [0, 0, 0]),
      yearRecord("2019-01-01", [0, 0, 0], { rangeUpper: 900 }),
      yearRecord(null, [0, 0, 0], { calibration: "C-0" }),
      ...steadyYears,
    ]);
    expect(found.records).toHaveLength(steadyYears.length);
    expect(found.leftOut).toEqual([
      "C-0: its day is not stated",
      "C-2018-01: from before a record that was left out",
      "C-2019-01: of another range or unit",
    ]);
  });

  test("where no record has a day there is nothing", () => {
    expect(overTheYears([yearRecord(null, [0, 0, 0])])).toBeUndefined();
    expect(overTheYears([])).toBeUndefined();
  });
});

test("the order in which records are given does not matter", () => {
  expect(years(steadyYears.toReversed())).toEqual(years(steadyYears));
});

test("where the results say nothing of a limit, the point that uses up most of its tolerance leads", () => {
  const found = years([yearRecord("2024-01-01", [1, -3, 2]), yearRecord("2025-01-01", [1, -3.5, 2])]);
  expect(found.places[found.leading ?? 0]?.distance).toBe(500);
});

test("test points that were not set to the same millimetre are one, up to 2 % of span", () => {
  const moved = steadyYears.map((record, index) => ({
    ...record,
    asFound: record.asFound && {
      ...record.asFound,
      points: record.asFound.points.map((point) => ({ ...point, point: point.point + 19 * (index % 2) })),
    },
  }));
  expect(leadingOf(moved)?.drift).toEqual(leadingOf(steadyYears)?.drift);
});

test("a change leaves out what the same certificate contributes to both visits, and says whose it was", () => {
  const visit = (day: string, error: number, certificate: string): YearRecord => {
    const phase = yearPhase([0, error, 0]);
    const points = phase.points.map((point) => ({
      ...{ ...point, combinedUncertainty: 0.2, effectiveDegreesOfFreedom: null },
      certificates: [{ standard: "GB-1", certificate, standardUncertainty: 0.16 }],
    }));
    return yearRecord(day, { ...phase, points });
  };
  const [same, other] = ["EX-1", "EX-2"].map(
    (now) => years([visit("2024-01-01", 1, "EX-1"), visit("2025-01-01", 2, now)]).records[1]?.change,
  );
  expect(same).toMatchObject({ errorDistance: 1, sameStandards: ["GB-1"] });
  // √(2 · (0.2² − 0.16²)) = 0.1697 against √(2 · 0.2²) = 0.2828, each with k = 2 for 95.45 %.
  expect(same?.expandedUncertainty.toFixed(4)).toBe("0.3394");
  expect(other?.sameStandards).toEqual([]);
  expect(other?.expandedUncertainty.toFixed(4)).toBe("0.5657");
});
