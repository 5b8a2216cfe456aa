import { describe, expect, test } from "vitest";
import { recordsOfOneLoop } from "../../src/analysis/years/records-of-one-loop.ts";
import { overTheYears, type YearRecord } from "../../src/assembly/years/over-the-years.ts";
import type { PhaseInShort, RecordInShort } from "../../src/filing/record-in-short.ts";
import { registerDrift } from "../../src/filing/register-drift.ts";
import type { PhaseSummary } from "../../src/record/record-summary-schema.ts";
import { driftHistory } from "../../src/verdict/recommendation/drift-history.ts";
import { steadyYears, yearPhase, yearRecord } from "../assembly/sample-years.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const driftOf = (all: readonly RecordInShort[]) => registerDrift(all).drift;
const found = (performedOn: string | null, upper: number, more: Partial<RecordInShort> = {}) =>
  entry({ performedOn, asFound: phaseInShort("pass", 0, upper), ...more }).summary;

test("1 % of span more at the upper end every year is a drift of 1 % of span a year", () => {
  const drift = driftOf(
    ["2022-01-01", "2023-01-01", "2024-01-01", "2025-01-01"].map((on, year) => found(on, 0.1 * year)),
  );
  // Years of 365, 365 and 366 days: the slope is 0.1 within a day of a year.
  expect("percentSpanPerYear" in drift && Math.abs(drift.percentSpanPerYear - 0.1)).toBeLessThan(0.1 / 365);
  expect("isEarly" in drift).toBe(false);
});

test("by three records it is early", () => {
  const drift = driftOf(["2022-01-01", "2023-01-01", "2024-01-01"].map((on, year) => found(on, 0.1 * year)));
  expect(drift).toMatchObject({ isEarly: true });
});

test.each<[string, readonly RecordInShort[]]>([
  ["no day is stated", [found(null, 0)]],
  ["not enough: one record", [found("2022-01-01", 0)]],
  ["not enough: two records", [found("2022-01-01", 0), found("2023-01-01", 0)]],
  ["not enough: one record", [found("2022-01-01", 0), found("2023-01-01", 0, { rangeUpper: 200 })]],
  ["not enough: one record", [found("2022-01-01", 0, { serial: "A-1" }), found("2023-01-01", 0, { serial: "A-2" })]],
  ["no test point was judged", [found("2022-01-01", 0, { asFound: null })]],
])("it is not determined: %s", (notDetermined, records) => {
  expect(driftOf(records)).toEqual({ notDetermined });
});

/** As an index keeps it. */
function inShort(record: YearRecord): RecordInShort {
  const phase = (of: PhaseSummary | null): PhaseInShort | null => {
    if (of === null) return null;
    const { points, ...rest } = of;
    return {
      ...rest,
      places: points.map(({ point, errorDistance, toleranceLow, toleranceHigh }) => [
        ...([point, errorDistance, toleranceLow, toleranceHigh] as const),
      ]),
    };
  };
  return { ...entry({}).summary, ...record, asFound: phase(record.asFound), asLeft: phase(record.asLeft) };
}

describe("register, history and recommendation read one number", () => {
  const repaired = yearRecord("2025-03-03", [0.5, 2.6, 0.2], { adjustment: "repair", asLeft: yearPhase([0, 0, 0]) });
  const range = { rangeLower: 0, rangeUpper: 1000 };

  test.each<[string, readonly YearRecord[]]>([
    ["five records after a re-teach", steadyYears],
    ["three of them", steadyYears.slice(0, 3)],
    ["two of them", steadyYears.slice(0, 2)],
    ["a repair at the last visit", [...steadyYears, repaired]],
    [
      "another sensor before",
      [yearRecord("2019-01-01", [1, 1, 1], { serial: "A-1" }), yearRecord("2020-01-01", [1, 2, 1], { serial: "A-2" })],
    ],
  ])("%s", (_, records) => {
    const years = overTheYears(records);
    const place = years?.places[years.leading ?? -1];
    const register = driftOf(records.map(inShort));
    const { drift } = driftHistory(recordsOfOneLoop(records).records, range, false);
    if (place?.drift === null || place === undefined) {
      expect(register).toEqual({ notDetermined: place?.notDetermined.drift });
      expect(drift).toEqual(register);
      return;
    }
    expect(register).toMatchObject({ percentSpanPerYear: (100 * place.drift.perYear) / 1000 });
    expect(drift).toMatchObject({ point: place.distance, perYear: { value: place.drift.perYear } });
  });
});

test("the forecast is that of the test point that leads: when its band meets a limit", () => {
  const years = ["2022-01-01", "2023-01-01", "2024-01-01", "2025-01-01"];
  const { forecast } = registerDrift(years.map((on, year) => found(on, 0.1 * year)));
  expect(forecast).toMatchObject({ limit: "upper", isAlready: false, on: expect.stringMatching(/^20[34]\d-/u) });
  expect(registerDrift([found("2022-01-01", 0)]).forecast).toHaveProperty("notDetermined");
});
