import { expect, test } from "vitest";
import { openStep, readingSteps, standardSteps, unreadStep } from "../../../src/verdict/recommendation/open-steps.ts";
import { finding, reasonsOf, stateOf } from "./sample-state.ts";

const undecided = {
  statement: "cannot be decided",
  rule: { name: "guard band", guardFactor: 1 },
  worstPoint: { point: 700, errorDistance: -4, expandedUncertainty: 12, tolerance: 10, greatestSource: "tape" },
} as const;

test("a U that is too large names the U that is needed, the one that would just do, and its greatest source", () => {
  const [step] = standardSteps(stateOf(undecided));
  // The usual ratio of 4 needs 10/4 = 2.5 mm; |−4| + U <= 10 needs 6 mm.
  expect(step?.does).toBe("Measure with a standard that brings U to 2.5 mm or less.");
  expect(reasonsOf(step).slice(2)).toEqual([
    "The error that was measured would be accepted with a U of 6 mm or less.",
    "The greatest part of U comes from: tape.",
  ]);
});

test("a statement that was made asks for no standard", () => {
  expect(standardSteps(stateOf())).toEqual([]);
});

test("slips, warm-up and contradictions are read again, in one step", () => {
  const failedChecks = [
    {
      item: "burden",
      key: "burden",
      number: 6,
      says: "700 Ω where 500 Ω at most is allowed",
      isContradiction: true,
    } as const,
  ];
  const [step, ...others] = readingSteps(stateOf({ failedChecks }), [
    finding("typing-error", "readings"),
    finding("datum-shifted", "sensor"),
  ]);
  expect(others).toEqual([]);
  expect(step).toMatchObject({ action: "cannot be decided", of: "readings" });
  expect(step?.does).toContain("correct nothing by guess. Look once more at");
  expect(reasonsOf(step)).toEqual(["It is typing-error.", "“burden”: 700 Ω where 500 Ω at most is allowed."]);
  expect(readingSteps(stateOf(), [])).toEqual([]);
});

test("a loop that does not pass for no known reason is read again", () => {
  expect(reasonsOf(openStep(stateOf({ faultReadings: 2 })))[1]).toContain("2 readings reported a fault");
  expect(openStep(stateOf({ statement: null })).rule).toBe("nothing could be judged");
  expect(openStep(stateOf({ judged: "value" })).does).toContain("with the sensor's signal");
});

test("a loop that was adjusted and not read since is read as left, for the reasons that the record gives", () => {
  const step = unreadStep({ missing: ["no readings were taken as left"] });
  expect(step).toMatchObject({ action: "cannot be decided", of: "readings" });
  expect(step.does).toBe("Read the loop as left before anything else is decided.");
  expect(reasonsOf(step)).toEqual(["No readings were taken as left."]);
});
