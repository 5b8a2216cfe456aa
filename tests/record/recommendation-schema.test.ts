import { expect, test } from "vitest";
import { recommendationSchema } from "../../src/record/recommendation-schema.ts";
import { thresholdsOf } from "../../src/verdict/recommendation/recommendation-thresholds.ts";
import { stepOf } from "../../src/verdict/recommendation/step.ts";

const step = stepOf({ action: "re-teach", of: "sensor", does: "Teach it.", rule: "a rule", reasons: ["a reason"] });
const part = {
  asFound: { ...step, also: [step] },
  thresholds: thresholdsOf({}),
  history: ["No filed history was given."],
};

test("a recommendation has its steps, its limits and what the history says", () => {
  expect(recommendationSchema.safeParse(part).success).toBe(true);
});

test.each([
  ["an action that nobody knows", { action: "calibrate" }],
  ["a place that nobody knows", { of: "roof" }],
  ["no rule", { rule: undefined }],
  ["a key that nobody knows", { weight: 1 }],
])("%s is refused", (_, changed) => {
  expect(recommendationSchema.safeParse({ ...part, asFound: { ...part.asFound, ...changed } }).success).toBe(false);
});
