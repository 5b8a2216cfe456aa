import { expect, test } from "vitest";
import { notDetermined } from "../../../src/analysis/figures/figure.ts";
import { driftHistory } from "../../../src/verdict/recommendation/drift-history.ts";
import { driftReasons } from "../../../src/verdict/recommendation/drift-words.ts";

const none = driftHistory(undefined, { rangeLower: 0, rangeUpper: 1000 }, false);
const change = {
  from: "C-1",
  to: "C-2",
  adjustment: "re-teach",
  point: 700,
  errorDistance: 12.34,
  expandedUncertainty: 0.82,
  sameStandards: [],
  years: 0.5,
  perYear: 24.68,
};
const drift = {
  point: 500,
  perYear: { value: 0.478, low: 0.37, high: 0.586 },
  records: 5,
  isEarly: false,
  isSinceAdjustment: true,
};

test("no history, an empty one, and one without common points are told apart", () => {
  expect(driftReasons(none, "mm")).toEqual(["No filed history was given."]);
  expect(driftReasons({ ...none, earlier: 0 }, "mm")[0]).toContain("no earlier record");
  expect(driftReasons({ ...none, earlier: 2 }, "mm")[0]).toContain("no test point in common");
});

test("the drift since the last adjustment stands first, with its interval and where it was found", () => {
  expect(driftReasons({ ...none, earlier: 4, drift, changes: [change] }, "mm")[0]).toBe(
    "Since the last adjustment the error at 500 mm drifts by +0.48 mm a year (95 %: +0.37 to +0.59), by 5 records.",
  );
  const untouched = { ...drift, isSinceAdjustment: false };
  expect(driftReasons({ ...none, earlier: 4, drift: untouched, changes: [change] }, "mm")[0]).toMatch(
    /^The error at 500 mm drifts by/u,
  );
  const early = { ...drift, records: 3, isEarly: true };
  expect(driftReasons({ ...none, earlier: 2, drift: early, changes: [change] }, "mm")[0]).toContain(
    "by 3 records, which is early.",
  );
  expect(
    driftReasons({ ...none, earlier: 1, drift: notDetermined("not enough"), changes: [change] }, "mm"),
  ).toHaveLength(2);
});

test("a change is told with its work, its place, its time and its U", () => {
  expect(driftReasons({ ...none, earlier: 1, changes: [change] }, "mm")).toEqual([
    "From C-1 to C-2, after re-teach: +12 mm at 700 mm in 0.5 years (U 0.82 mm).",
    "One interval does not show how the drift goes on.",
  ]);
});

test("two changes with a growth say how many times as fast", () => {
  const two = {
    ...none,
    earlier: 2,
    changes: [change, { ...change, adjustment: null, years: 0, perYear: null }],
    growth: { factor: 2.5, atLeast: 1.4 },
  };
  expect(driftReasons(two, "mm").slice(1)).toEqual([
    "From C-1 to C-2: +12 mm at 700 mm (U 0.82 mm).",
    "That is 2.5 times as fast as in the interval before, and 1.4 times at least by the U of both.",
  ]);
});
