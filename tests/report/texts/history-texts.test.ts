import { describe, expect, test } from "vitest";
import type { YearRecord } from "../../../src/assembly/years/over-the-years.ts";
import { overTheYears } from "../../../src/assembly/years/over-the-years.ts";
import {
  controlChartWorking,
  driftWords,
  errorWords,
  forecastAnswer,
  forecastWords,
  leadingPlaceOf,
  proposalWords,
  reliabilityWords,
  staircaseWorking,
  stateWords,
} from "../../../src/report/texts/history-texts.ts";
import { steadyYears, yearPhase, yearRecord } from "../../assembly/sample-years.ts";
import { sampleRecord } from "../../charts/sample-record.ts";

const years = (records: readonly YearRecord[], intervalMonths?: number) => overTheYears(records, { intervalMonths })!;
const steady = years(steadyYears, 12);

test("a drift has the digits that its interval supports", () => {
  const drift = { perYear: 0.48123, low: 0.3712, high: 0.5913, residualStdDev: 0.1, degreesOfFreedom: 3 };
  expect(driftWords(drift)).toBe("+0.48, from +0.37 to +0.59");
  expect(driftWords({ ...drift, perYear: -12.34, low: -45.6, high: 20.9 })).toBe("−12, from −46 to +21");
});

test("the first page has the forecast, and says where it comes before the next due date", () => {
  const [leading] = steady.places;
  const place = { ...leading!, meets: { on: "2027-07-06", limit: "upper" as const, isAlready: false } };
  const record = { ...sampleRecord(), overTheYears: { ...steady, leading: 0, places: [place] } };
  expect(forecastAnswer({ ...record, nextDue: "2027-07-06" })).toBe("meets the upper limit on 2027-07-06");
  expect(forecastAnswer({ ...record, nextDue: "2027-07-07" })).toBe(
    "meets the upper limit on 2027-07-06, before the next due date",
  );
  expect(forecastAnswer({ ...record, nextDue: undefined })).toBe("meets the upper limit on 2027-07-06");
});

test("the first page has no forecast without a history, or where no limit is met", () => {
  const record = sampleRecord();
  expect(forecastAnswer(record)).toBeUndefined();
  const place = { ...steady.places[0]!, meets: null };
  expect(forecastAnswer({ ...record, overTheYears: { ...steady, leading: 0, places: [place] } })).toBeUndefined();
});

test("an error has the digits of its U, or was not measured", () => {
  expect(errorWords({ errorDistance: 2.1, expandedUncertainty: 0.4 })).toBe("+2.10 ± 0.40");
  expect(errorWords(null)).toBe("not measured there");
});

describe("a state says how much of the tolerance was used, and where another point was worse", () => {
  const state = { errorDistance: 2.1, expandedUncertainty: 0.4, toleranceLow: -5, toleranceHigh: 5 };
  const worse = { ...state, point: 1000, errorDistance: -4, partOfTolerance: 0.8 };

  test("in words", () => {
    const same = { ...state, point: 500, partOfTolerance: 0.42 };
    expect(stateWords({ statement: "pass", point: state, worst: same }, "mm")).toBe("pass, 42 % of the tolerance");
    expect(stateWords({ statement: "pass", point: state, worst: worse }, "mm")).toBe(
      "pass; worst −4.00 at 1000 mm, 80 %",
    );
    expect(stateWords({ statement: null, point: null, worst: null }, "mm")).toBe("not determined");
  });
});

describe("a forecast is a day, a reason, or that it lies beyond already", () => {
  const place = leadingPlaceOf(steady)!;

  test("in words", () => {
    expect(forecastWords(place)).toMatch(/upper limit on \d{4}-\d\d-\d\d$/u);
    expect(forecastWords({ ...place, meets: { on: "2024-03-04", limit: "lower", isAlready: true } })).toMatch(
      /beyond the lower limit/u,
    );
    expect(forecastWords({ ...place, meets: null, notDetermined: { meets: "not within 20 years" } })).toMatch(
      /not within 20 years/u,
    );
    expect(forecastWords({ ...place, drift: null, notDetermined: { drift: "not enough: one record" } })).toMatch(
      /not enough: one record/u,
    );
  });
});

describe("each proposal shows its working", () => {
  test("the staircase: interval, what was found, factor, caps", () => {
    const working = staircaseWorking(steady).join(" ");
    expect(working).toContain("The interval as stated is 12 months; 364 days had passed.");
    expect(working).toContain("took up 42 % of it");
    expect(working).toContain("12 × 1.25 = 15");
    expect(working).toContain("between 1 and 36 months");
    expect(staircaseWorking(years(steadyYears)).join(" ")).toContain("No interval is stated");
  });

  test("the control chart: drift, scatter, what is expected on the day, the limits", () => {
    const working = controlChartWorking(steady, "mm").join(" ");
    expect(working).toMatch(/^[Tt]est point 500 mm: drift \+0\.\d+/u);
    expect(working).toContain("pooled over the test points, 5.5 degrees of freedom");
    expect(working).toContain("−5.00 to +5.00 mm");
  });

  test("nothing where there is none", () => {
    const few = years(steadyYears.slice(0, 1));
    expect(staircaseWorking(few)).toEqual([]);
    expect(controlChartWorking(few, "mm")).toEqual([]);
    expect(proposalWords(null, "not enough: one record")).toBe("not enough: one record");
  });
});

test("the reliability has its count and its interval, or the reason why there is none", () => {
  expect(reliabilityWords(steady)).toContain("4 of 4 (100 %)");
  expect(reliabilityWords(steady)).toContain("39.8 % and 100 %");
  expect(reliabilityWords(years(steadyYears.slice(0, 1)))).toMatch(/not enough/u);
  const failed = yearRecord("2025-03-03", yearPhase([0, 6, 0], "fail"));
  expect(reliabilityWords(years([...steadyYears, failed]))).toContain("4 of 5 (80 %)");
});
