import * as z from "zod";
import type { RecommendationThresholds } from "../verdict/recommendation/recommendation-thresholds.ts";
import type { RecommendedAction, StepPlace } from "../verdict/recommendation/step.ts";
import type { WorkDone } from "../verdict/recommendation/work-done.ts";
import { causePlaces } from "./causes-schema.ts";

const finite = z.number();

const recommendedActions = [
  "leave",
  "re-teach",
  "re-scale",
  "repair wiring or set-up",
  "replace",
  "cannot be decided",
] as const satisfies readonly RecommendedAction[];
const stepPlaces = [
  "loop",
  "set-up",
  "wiring",
  "sensor",
  "controller",
  "switched output",
  "readings",
  "standard",
] as const satisfies readonly StepPlace[];

const step = {
  action: z.enum(recommendedActions),
  of: z.enum(stepPlaces).describe("what is to be worked on"),
  does: z.string().describe("for whoever does it"),
  rule: z.string().describe("the rule that led here"),
  reasons: z
    .array(
      z.strictObject({
        says: z.string(),
        cause: z
          .strictObject({ id: z.string().min(1), stage: z.enum(causePlaces) })
          .optional()
          .describe("of the finding that says so"),
      }),
    )
    .describe("the weightiest first"),
  before: z.string().nullable().describe("what to make sure of before"),
  constants: z.enum(["of the forecast", "of the instrument's row"]).nullable().describe("what to type in"),
};

const phaseRecommendationSchema = z.strictObject({
  ...step,
  also: z.array(z.strictObject(step)).describe("what comes after it, in this order"),
});

const thresholdNames = [
  "adjustAt",
  "reteachResidualMax",
  "reteachScatterMax",
  "replaceScatterFrom",
  "replaceResidualFrom",
  "driftGrowthMax",
  "stageShareFrom",
] as const satisfies readonly (keyof RecommendationThresholds)[];

/** What to do with the loop: an opinion, with what led there. */
export const recommendationSchema = z.strictObject({
  asFound: phaseRecommendationSchema.optional(),
  asLeft: phaseRecommendationSchema.optional(),
  workDone: z
    .strictObject({
      asked: z.array(z.enum(recommendedActions)),
      done: z.string().nullable(),
      agreement: z.enum([
        "as asked",
        "a part of it",
        "something else",
        "nothing was done",
        "not stated",
      ] satisfies WorkDone["agreement"][]),
    })
    .optional()
    .describe("what the loop as found asked for, beside what was done"),
  thresholds: z.array(
    z.strictObject({
      name: z.enum(thresholdNames),
      column: z.string().describe("of the table instruments, that sets it"),
      about: z.string(),
      value: finite,
      unit: z.enum(["% of tolerance", "times"]),
      from: z.enum(["instruments table", "default, own choice"]),
    }),
  ),
  history: z.array(z.string()).describe("what the filed history says of the drift, in sentences"),
});

export type RecommendationRecord = z.infer<typeof recommendationSchema>;
export type PhaseRecommendationRecord = z.infer<typeof phaseRecommendationSchema>;
export type RecommendedStepRecord = PhaseRecommendationRecord["also"][number];
