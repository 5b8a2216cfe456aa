import { expect, test } from "vitest";
import { agreementBySteps } from "../../../src/analysis/plausibility/agreement-by-steps.ts";
import { expectNear } from "../sample-loop.ts";

const group = (steps: readonly number[], references: readonly number[] = steps.map(() => 50)) =>
  steps.map((step, at) => ({
    direction: "rising" as const,
    reference: references[at] ?? 50,
    signal: Number((12 + step / 1000).toFixed(3)),
  }));

test("fine digits agree by chance as often as a step has room in the scatter", () => {
  // Differences of 40, 50 and 0 steps; those that are not 0 have a median of 45, and the steps are tens: 4.5 of them.
  expect(agreementBySteps([group([0, 40, 90, 90])])).toBe(1);
  // With 41 the step is 1: 45 steps, s = 45/(0.6745·√2), d/(2√π·s) = 0.9539/(3.5449·45).
  expectNear(agreementBySteps([group([0, 41, 90, 90])]), 0.9539 / (3.5449 * 45), 1e-6);
});

test("references that differ make it less likely still", () => {
  const alike = agreementBySteps([group([0, 41, 90, 90])]);
  const both = agreementBySteps([group([0, 41, 90, 90], [50, 50.7, 51.1, 51.1])]);
  // Steps of 0.1: 7 and 4 of them, the median 5.5.
  expectNear(both, alike * (0.9539 / (3.5449 * 5.5)), 1e-6);
});

test("where nothing agrees there is no chance to tell of", () => {
  expect(agreementBySteps([group([0, 41, 90])])).toBe(0);
});
