import { expect, test } from "vitest";
import { driftReasons } from "../../../src/verdict/recommendation/drift-words.ts";

const none = { earlier: null, intervals: [], isTaughtTwice: false, growth: null, isOfWholeLoop: false };
const interval = {
  from: "C-1",
  to: "C-2",
  adjustment: "re-teach",
  point: 700,
  drift: 12.34,
  uncertainty: 0.82,
  years: 0.5,
};

test("no history, an empty one, and one without common points are told apart", () => {
  expect(driftReasons(none, "mm")).toEqual(["No filed history was given."]);
  expect(driftReasons({ ...none, earlier: 0 }, "mm")[0]).toContain("no earlier record");
  expect(driftReasons({ ...none, earlier: 2 }, "mm")[0]).toContain("no test point in common");
});

test("an interval is told with its work, its drift, its place, its time and its U", () => {
  expect(driftReasons({ ...none, earlier: 1, intervals: [interval] }, "mm")).toEqual([
    "From C-1 to C-2, after re-teach: +12 mm at 700 mm in 0.5 years (U 0.82 mm).",
    "One interval does not show how the drift goes on.",
  ]);
});

test("two intervals with a growth say how many times as fast", () => {
  const two = {
    ...none,
    earlier: 2,
    intervals: [interval, { ...interval, adjustment: null, years: null }],
    growth: 2.5,
  };
  expect(driftReasons(two, "mm").slice(1)).toEqual([
    "From C-1 to C-2: +12 mm at 700 mm (U 0.82 mm).",
    "That is 2.5 times as fast as in the interval before.",
  ]);
});
