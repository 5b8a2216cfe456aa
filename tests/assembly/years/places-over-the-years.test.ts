import { describe, expect, test } from "vitest";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import { type DriftLine, driftLine } from "../../../src/analysis/years/drift-line.ts";
import { bandOf, leadingPlace, placesOf } from "../../../src/assembly/years/places-over-the-years.ts";
import type { DatedSummary } from "../../../src/assembly/years/records-of-one-loop.ts";
import { steadyYears } from "../sample-years.ts";

const dated = steadyYears.map((record) => {
  const performedOn = record.performedOn ?? "";
  return { ...record, performedOn, day: dayNumber(performedOn) };
}) satisfies readonly DatedSummary[];

describe("the places of a loop", () => {
  test("are its test points by distance, and both ends of its line", () => {
    expect(placesOf(dated).map(({ kind, distance }) => [kind, distance])).toEqual([
      ["test point", 0],
      ["test point", 500],
      ["test point", 1000],
      ["line at the lower end", 0],
      ["line at the upper end", 1000],
    ]);
  });

  test("the ends of the line drift as zero and span do, in distance", () => {
    const lower = placesOf(dated).find(({ kind }) => kind === "line at the lower end");
    const zero = driftLine(dated.map(({ day }, index) => ({ day, error: [0.1, 0.2, 0.4, 0.3, 0.5][index] ?? 0 })));
    // The sample's zero error is that of its first test point, in percent of 1000 mm: the same to rounding.
    expect(Math.abs((lower?.drift?.perYear ?? 9) - (zero as DriftLine).perYear.value)).toBeLessThan(1e-12);
    expect([lower?.toleranceLow, lower?.toleranceHigh]).toEqual([-5, 5]);
  });

  test("without any judged point there are none, and nothing leads", () => {
    const empty = dated.map((record) => ({ ...record, asFound: null, asLeft: null }));
    expect(placesOf(empty)).toEqual([]);
    expect(leadingPlace([])).toBeNull();
  });
});

test("an end of the line never leads, be its forecast the first", () => {
  const places = placesOf(dated).filter(({ kind }) => kind !== "test point");
  expect(leadingPlace(places)).toBeNull();
});

describe("the band that is drawn", () => {
  const line = driftLine([0, 1, 2, 3].map((year) => ({ day: 365.25 * year, error: year }))) as DriftLine;

  test("goes from the first day evenly to a third beyond the meeting", () => {
    const crossing = { day: 3653, limit: "upper", isAlready: false } as const;
    const band = bandOf(line, crossing, 1096);
    expect(band).toHaveLength(41);
    expect(band[0]).toMatchObject({ on: "1970-01-01" });
    expect(dayNumber(band.at(-1)?.on ?? "")).toBe(3653 + Math.ceil(1096 / 3));
  });

  test("without a meeting as far ahead as the records reach back", () => {
    expect(dayNumber(bandOf(line, undefined, 1096).at(-1)?.on ?? "")).toBe(2 * 1096);
  });
});

describe("a test point without a tolerance", () => {
  const withoutTolerance = dated.map((record) => ({
    ...record,
    asFound: record.asFound && {
      ...record.asFound,
      points: record.asFound.points.map((point) =>
        point.point === 500 ? { ...point, toleranceLow: 0, toleranceHigh: 0 } : point,
      ),
    },
  }));

  test("drifts, and meets nothing", () => {
    const middle = placesOf(withoutTolerance).find(({ distance }) => distance === 500);
    expect(middle?.drift).not.toBeNull();
    expect(middle).toMatchObject({ meets: null, notDetermined: { meets: "there is no tolerance there" } });
  });

  test("does not speak for the loop, however fast it drifts", () => {
    const places = placesOf(withoutTolerance);
    expect(places[leadingPlace(places) ?? -1]?.distance).not.toBe(500);
  });
});
