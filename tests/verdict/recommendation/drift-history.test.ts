import { expect, test } from "vitest";
import { isDetermined } from "../../../src/analysis/figures/figure.ts";
import { dayNumber } from "../../../src/analysis/years/day-number.ts";
import { loopDrift } from "../../../src/analysis/years/loop-drift.ts";
import { type DriftRecord, driftHistory } from "../../../src/verdict/recommendation/drift-history.ts";
import { frozen } from "../../charts/frozen.ts";

const points = (...errors: readonly number[]) =>
  errors.map((errorDistance, index) => ({
    ...{ point: 100 * index, errorDistance, expandedUncertainty: 0.5, toleranceLow: -10, toleranceHigh: 10 },
  }));

const state = (
  calibration: string,
  performedOn: string,
  adjustment: string | null,
  asFound: readonly number[],
  asLeft?: readonly number[],
): DriftRecord =>
  frozen({
    calibration,
    day: dayNumber(performedOn),
    adjustment,
    asFound: { points: points(...asFound) },
    asLeft: asLeft === undefined ? null : { points: points(...asLeft) },
  });

/** Test points within 2 % of it, 2 mm, are the same. */
const range = { rangeLower: 0, rangeUpper: 100 };
const historyOf = (...records: readonly DriftRecord[]) => driftHistory(records, range, false);

const first = state("C-1", "2024-01-01", "re-teach", [9, 9], [0, 0]);
const second = state("C-2", "2025-01-01", "re-teach", [2, 4], [0, 0]);
const now = state("C-3", "2026-01-01", null, [3, 5]);

test("without a history there is nothing to say; with an empty one neither", () => {
  expect(driftHistory(undefined, range, false)).toMatchObject({ earlier: null, changes: [] });
  expect(historyOf(now)).toMatchObject({ earlier: 0, changes: [], isTaughtTwice: false });
});

test("one earlier record gives one change, at the point that moved most, and no judgement", () => {
  const found = historyOf(second, now);
  // As left 0 at 100 mm, as found 5: +5; U is √(0.5² + 0.5²) = 0.7071; 2025 has 365 days.
  expect(found.changes).toMatchObject([
    { from: "C-2", to: "C-3", point: 100, errorDistance: 5, adjustment: "re-teach" },
  ]);
  expect(Math.abs((found.changes[0]?.expandedUncertainty ?? 0) - Math.SQRT1_2)).toBeLessThan(1e-12);
  expect(Math.abs((found.changes[0]?.years ?? 0) - 365 / 365.25)).toBeLessThan(1e-12);
  expect(found).toMatchObject({ isTaughtTwice: false, growth: null });
});

test("the drift is that of the loop: at the test point that speaks for it, since the last adjustment", () => {
  const untouched = ["2026-01-01", "2027-01-01", "2028-01-01"].map((day, year) =>
    state(`C-${year + 3}`, day, "none", [0, year + 1]),
  );
  const { drift } = historyOf(first, second, ...untouched);
  const { points: places, leading } = loopDrift([first, second, ...untouched], range);
  const line = isDetermined(leading) ? places[leading.index]?.line : undefined;
  expect(drift).toMatchObject({ point: 100, records: 4, isEarly: false, isSinceAdjustment: true });
  expect(historyOf(...untouched).drift).toMatchObject({ records: 3, isSinceAdjustment: false });
  expect("perYear" in drift && drift.perYear).toEqual(line && "perYear" in line && line.perYear);
  expect(historyOf(second, now).drift).toEqual({ notDetermined: "not enough: two records since the last adjustment" });
});

test("taught twice and moved the same way twice is seen; the growth is that of the yearly rates", () => {
  const found = historyOf(first, second, now);
  expect(found.isTaughtTwice).toBe(true);
  // +4 in 366 days (2024 is a leap year), +5 in 365: (5/365) / (4/366).
  const factor = (5 * 366) / (4 * 365);
  expect(Math.abs((found.growth?.factor ?? 0) - factor)).toBeLessThan(1e-12);
  // At least: 5 less its U over 4 with its own.
  const [before, last] = found.changes.map(({ expandedUncertainty }) => expandedUncertainty) as [number, number];
  const least = (factor * (1 - last / 5)) / (1 + before / 4);
  expect(Math.abs((found.growth?.atLeast ?? 0) - least)).toBeLessThan(1e-12);
  expect(last).toBeGreaterThan(0);
});

test("an older record than the last two adds no change", () => {
  const older = state("C-0", "2020-01-01", "none", [70, 70]);
  expect(historyOf(older, first, second, now).changes).toEqual(historyOf(first, second, now).changes);
});

test.each<[string, DriftRecord[], DriftRecord]>([
  ["that turned round", [first, second], state("C-3", "2026-01-01", null, [-3, -5])],
  ["within its U", [first, second], state("C-3", "2026-01-01", null, [0.1, 0.6])],
  ["after a repair", [first, { ...second, adjustment: "repair" }], now],
])("a change %s does not count as taught twice", (_, earlier, current) => {
  expect(historyOf(...earlier, current).isTaughtTwice).toBe(false);
});

test("where nothing was adjusted an interval starts from what was found", () => {
  const untouched = state("C-2", "2025-01-01", "none", [2, 4]);
  expect(historyOf(untouched, now).changes[0]?.errorDistance).toBe(1);
});

test("a loop that was adjusted and not read again starts no interval: what it was left with is not known", () => {
  const unread = state("C-2", "2025-01-01", "re-teach", [2, 4]);
  expect(historyOf(first, unread, now)).toMatchObject({ earlier: 2, changes: [] });
  expect(historyOf({ ...first, asLeft: null }, second, now).changes.map(({ from }) => from)).toEqual(["C-2"]);
});

test("two records of one day give no rate", () => {
  expect(historyOf(first, { ...second, day: now.day }, now).growth).toBeNull();
});

test("records without a test point in common give no change", () => {
  const elsewhere = { ...second, asLeft: { points: points(0).map((point) => ({ ...point, point: 33 })) } };
  expect(historyOf(elsewhere, now)).toMatchObject({ earlier: 1, changes: [] });
});

test("test points of other records count as the same within 2 % of span", () => {
  const from = (point: number) => ({ ...second, asLeft: { points: points(0).map((one) => ({ ...one, point })) } });
  expect(historyOf(from(102), now).changes[0]?.errorDistance).toBe(5);
  expect(historyOf(from(102.1), now).changes).toEqual([]);
});
