import { describe, expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import { type DriftLine, driftLine } from "../../../src/analysis/years/drift-line.ts";
import { loopDrift } from "../../../src/analysis/years/loop-drift.ts";
import { sinceAdjustment } from "../../../src/analysis/years/place-drift.ts";
import { recordsOfOneLoop } from "../../../src/analysis/years/records-of-one-loop.ts";
import { steadyYears, yearPhase, yearRecord } from "../../assembly/sample-years.ts";

const range = { rangeLower: 0, rangeUpper: 1000 };
const { records } = recordsOfOneLoop(Object.freeze(steadyYears));
const driftOf = (of: typeof records) => loopDrift(of, range);
const leadingOf = (of: typeof records) => {
  const { points, leading } = driftOf(of);
  return isDetermined(leading) ? points[leading.index] : undefined;
};

test("every test point of the last state drifts by the least-squares line of its errors since the adjustment", () => {
  const { points } = driftOf(records);
  expect(points.map(({ distance }) => distance)).toEqual([0, 500, 1000]);
  const errors = [
    [0.1, 0.2, 0.4, 0.3, 0.5],
    [0.2, 0.8, 1.1, 1.8, 2.1],
    [-0.1, 0.1, 0, 0.2, 0.1],
  ];
  for (const [index, { line }] of points.entries()) {
    const alone = driftLine(records.map(({ day }, year) => ({ day, error: errors[index]?.[year] ?? 0 }))) as DriftLine;
    expect(isDetermined(line) && line.perYear.value).toBe(alone.perYear.value);
    expect(isDetermined(line) && line.own).toEqual(alone.own);
  }
});

test("the scatter is pooled over the test points of the same records", () => {
  const scatters = driftOf(records).points.map(({ line }) => (isDetermined(line) ? line.scatter.degreesOfFreedom : 0));
  // Five records leave three degrees of freedom to one point, nine at most to three.
  for (const freedom of scatters) {
    expect(freedom).toBeGreaterThan(3);
    expect(freedom).toBeLessThanOrEqual(9);
  }
});

test("a test point that was not read in each of the records keeps a scatter of its own", () => {
  const partly = records.map((record, index) => ({
    ...record,
    asFound: record.asFound && {
      ...record.asFound,
      points: record.asFound.points.filter(({ point }) => index !== 2 || point !== 0),
    },
  }));
  const [lower, middle] = driftOf(partly).points;
  if (lower === undefined || !isDetermined(lower.line)) throw new RangeError("the lower end has no line");
  const { scatter, own } = lower.line;
  expect(scatter.degreesOfFreedom).toBe(own.degreesOfFreedom);
  expect(Math.abs(scatter.standardDeviation - own.standardDeviation)).toBeLessThan(1e-15);
  expect(middle && isDetermined(middle.line) && middle.line.scatter.degreesOfFreedom).toBeGreaterThan(3);
});

describe("the place that speaks for the loop", () => {
  test("is the test point whose forecast meets a limit first", () => {
    expect(leadingOf(records)?.distance).toBe(500);
    const days = driftOf(records).points.flatMap(({ meets }) => (isDetermined(meets) ? [meets.day] : []));
    const meets = leadingOf(records)?.meets;
    expect(meets && isDetermined(meets) && meets.day).toBe(Math.min(...days));
  });

  test("where there is no forecast, the one that takes up the most of its tolerance now", () => {
    const two = recordsOfOneLoop([yearRecord("2024-01-01", [1, -3, 2]), yearRecord("2025-01-01", [1, -3.5, 2])]);
    expect(leadingOf(two.records)?.distance).toBe(500);
    expect(leadingOf(two.records)?.line).toEqual({ notDetermined: "not enough: two records" });
  });

  test("is none where no test point was judged, or none has a tolerance", () => {
    const none = { notDetermined: "no test point was judged" };
    expect(driftOf([]).leading).toEqual(none);
    const empty = records.map((record) => ({ ...record, asFound: null, asLeft: null }));
    expect(driftOf(empty)).toEqual({ points: [], leading: none });
  });

  test("is no test point without a tolerance, however fast it drifts", () => {
    const free = records.map((record) => ({
      ...record,
      asFound: record.asFound && {
        ...record.asFound,
        points: record.asFound.points.map((point) =>
          point.point === 500 ? { ...point, toleranceLow: 0, toleranceHigh: 0 } : point,
        ),
      },
    }));
    const middle = driftOf(free).points[1];
    expect(middle?.meets).toEqual({ notDetermined: "there is no tolerance there" });
    expect(middle && isDetermined(middle.line)).toBe(true);
    expect(leadingOf(free)?.distance).not.toBe(500);
  });
});

describe("under four records a forecast is early, and under three there is none", () => {
  const firstOf = (count: number) => {
    const line = leadingOf(records.slice(0, count))?.line;
    return line && isDetermined(line) ? line.isEarly : line?.notDetermined;
  };

  test.each([
    [1, "not enough: one record since the last adjustment"],
    [2, "not enough: two records since the last adjustment"],
    [3, true],
    [4, false],
    [5, false],
  ])("%d records: %s", (count, said) => {
    expect(firstOf(count)).toBe(said);
  });
});

test("the line begins with what the last adjustment left, and follows what was found since", () => {
  const repaired = yearRecord("2025-03-03", [0.5, 2.6, 0.2], { adjustment: "repair", asLeft: yearPhase([0, 0, 0]) });
  const after = ["2026-03-02", "2027-03-01"].map((day, index) => yearRecord(day, [0, 0.1 * (index + 1), 0]));
  const since = sinceAdjustment(recordsOfOneLoop([...steadyYears, repaired, ...after]).records);
  expect(since.states.map(({ day }) => day)).toEqual(["2025-03-03", "2026-03-02", "2027-03-01"].map(dayNumber));
  expect(since.states.map(({ phase }) => phase.points[1]?.errorDistance)).toEqual([0, 0.1, 0.2]);
  expect(since.wasAdjusted).toBe(true);
});
