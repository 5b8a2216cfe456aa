import { expect, test } from "vitest";
import { leaveStep } from "../../../src/verdict/recommendation/leave-step.ts";
import { usualThresholds } from "../../../src/verdict/recommendation/recommendation-thresholds.ts";
import { finding, passing, reasonsOf, stateOf } from "./sample-state.ts";
import { switchedState } from "./sample-switching.ts";

test("the worst reading is said, and the limit from which adjusting would be asked for", () => {
  const limited = leaveStep(stateOf({ ...passing, thresholds: { ...usualThresholds, adjustAt: 80 } }));
  expect(limited.rule).toBe("it passes, and its worst error is below 80 % of the tolerance");
  expect(reasonsOf(limited)).toEqual([
    "It passes: the worst reading is 33 % of the tolerance, adjusting is asked for from 80 %.",
  ]);
  expect(leaveStep(stateOf(passing)).rule).toBe("it passes, and nothing is adjusted that passes");
});

test("outputs that pass, a conditional pass and small findings are told", () => {
  const step = leaveStep(
    stateOf({
      ...passing,
      statement: "conditional pass",
      switching: [switchedState()],
      findings: [finding("datum-shifted", "sensor")],
    }),
  );
  expect(reasonsOf(step).slice(1)).toEqual([
    "Q1 passes too.",
    "It is only just accepted: shorten the interval.",
    "Too small to be worked on, but to be watched: It is datum-shifted.",
  ]);
});

test("what is beyond the tolerance by itself is not called too small, and a number in doubt is to be looked at", () => {
  const of = (part: number) =>
    reasonsOf(
      leaveStep(
        stateOf({
          ...passing,
          stageParts: [{ stage: "input card and scaling", part }],
          findings: [finding("high-constant-wrong", "scaling"), finding("typing-error", "readings")],
        }),
      ),
    ).slice(-2);
  expect(of(31)[0]).toMatch(/^Beyond the tolerance by itself, and made up for at the end of the loop: /u);
  expect(of(0.9)[0]).toMatch(/^Too small to be worked on, but to be watched: /u);
  expect(of(0)[1]).toMatch(/^To be looked at before the numbers are used for anything else: /u);
});
