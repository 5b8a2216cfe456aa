import { expect, test } from "vitest";
import { type DriftState, driftHistory } from "../../../src/verdict/recommendation/drift-history.ts";
import { frozen } from "../../charts/frozen.ts";

const points = (...errors: readonly number[]) =>
  errors.map((errorDistance, index) => ({ point: 100 * index, errorDistance, expandedUncertainty: 0.5 }));

const state = (
  calibration: string,
  performedOn: string | null,
  adjustment: string | null,
  asFound: readonly number[],
  asLeft?: readonly number[],
): DriftState =>
  frozen({
    calibration,
    performedOn,
    adjustment,
    asFound: points(...asFound),
    asLeft: asLeft === undefined ? null : points(...asLeft),
  });

/** Test points within 2 % of it, 2 mm, are the same. */
const span = 100;

const first = state("C-1", "2024-01-01", "re-teach", [9, 9], [0, 0]);
const second = state("C-2", "2025-01-01", "re-teach", [2, 4], [0, 0]);
const now = state("C-3", "2026-01-01", null, [3, 5]);

test("without a history there is nothing to say; with an empty one neither", () => {
  expect(driftHistory(undefined, now, span, false)).toMatchObject({ earlier: null, intervals: [] });
  expect(driftHistory([], now, span, false)).toMatchObject({ earlier: 0, intervals: [], isTaughtTwice: false });
});

test("one earlier record gives one interval, at the point that moved most, and no judgement", () => {
  const found = driftHistory([second], now, span, false);
  // As left 0 at 100 mm, as found 5: +5; U is √(0.5² + 0.5²) = 0.7071; 2025 has 365 days.
  expect(found.intervals).toMatchObject([{ from: "C-2", to: "C-3", point: 100, drift: 5, adjustment: "re-teach" }]);
  expect(Math.abs((found.intervals[0]?.uncertainty ?? 0) - Math.SQRT1_2)).toBeLessThan(1e-12);
  expect(Math.abs((found.intervals[0]?.years ?? 0) - 365 / 365.25)).toBeLessThan(1e-12);
  expect(found).toMatchObject({ isTaughtTwice: false, growth: null });
});

test("taught twice and drifted the same way twice is seen; the growth is that of the yearly rates", () => {
  const found = driftHistory([first, second], now, span, false);
  expect(found.isTaughtTwice).toBe(true);
  // +4 in 366 days (2024 is a leap year), +5 in 365: (5/365) / (4/366).
  expect(Math.abs((found.growth ?? 0) - (5 * 366) / (4 * 365))).toBeLessThan(1e-12);
});

test("an older record than the last two changes nothing", () => {
  const older = state("C-0", "2020-01-01", "none", [70, 70]);
  expect(driftHistory([older, first, second], now, span, false).intervals).toEqual(
    driftHistory([first, second], now, span, false).intervals,
  );
});

test.each<[string, DriftState[], DriftState]>([
  ["that turned round", [first, second], state("C-3", "2026-01-01", null, [-3, -5])],
  ["within its U", [first, second], state("C-3", "2026-01-01", null, [0.1, 0.6])],
  ["after a repair", [first, { ...second, adjustment: "repair" }], now],
])("a drift %s does not count as taught twice", (_, earlier, current) => {
  expect(driftHistory(earlier, current, span, false).isTaughtTwice).toBe(false);
});

test("where nothing was adjusted an interval starts from what was found", () => {
  const untouched = state("C-2", "2025-01-01", "none", [2, 4]);
  expect(driftHistory([untouched], now, span, false).intervals[0]?.drift).toBe(1);
});

test("a loop that was adjusted and not read again starts no interval: what it was left with is not known", () => {
  const unread = state("C-2", "2025-01-01", "re-teach", [2, 4]);
  expect(driftHistory([first, unread], now, span, false)).toMatchObject({ earlier: 2, intervals: [] });
  const intervals = driftHistory([{ ...first, asLeft: null }, second], now, span, false).intervals;
  expect(intervals.map(({ from }) => from)).toEqual(["C-2"]);
});

test("a day that is missing, or two records of one day, give no rate", () => {
  expect(driftHistory([first, { ...second, performedOn: null }], now, span, false).growth).toBeNull();
  expect(driftHistory([first, { ...second, performedOn: "2026-01-01" }], now, span, false).growth).toBeNull();
});

test("records without a test point in common give no interval", () => {
  const elsewhere = frozen({ ...second, asLeft: [{ point: 33, errorDistance: 0, expandedUncertainty: 1 }] });
  expect(driftHistory([elsewhere], now, span, false)).toMatchObject({ earlier: 1, intervals: [] });
});

test("test points of other records count as the same within 2 % of span", () => {
  const from = (point: number) => frozen({ ...second, asLeft: [{ point, errorDistance: 0, expandedUncertainty: 1 }] });
  expect(driftHistory([from(102)], now, span, false).intervals[0]?.drift).toBe(5);
  expect(driftHistory([from(102.1)], now, span, false).intervals).toEqual([]);
});
