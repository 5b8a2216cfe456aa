import * as z from "zod";
import { directions } from "../model/calibration-words.ts";
import { statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();

/** The error that is worst after a correction, and what the decision rule says of all of them; distance. */
const errorLeft = z.strictObject({
  errorDistance: finite,
  errorPercentSpan: finite,
  point: finite,
  direction: z.enum(directions),
  expandedUncertainty: finite,
  statement: statementSchema,
});

const correction = z.strictObject({
  lower: finite.describe("distance that an output meant for range_lower is to stand for"),
  upper: finite.describe("distance that an output meant for range_upper is to stand for"),
  worst: errorLeft,
});

const correctedCurve = z.strictObject({
  now: errorLeft,
  best: correction.nullable().describe("the two constants that bring every judged error farthest inside its limits"),
  ends: correction.nullable().describe("re-teach at the first and the last test point"),
  isCurable: z.boolean().nullable().describe("null where the decision rule can decide nothing, or there is no line"),
  whyNot: z
    .strictObject({ because: z.enum(["spread at one point", "curvature"]), point: finite, halfSpread: finite })
    .optional(),
  steadyLeft: finite
    .optional()
    .describe(
      "part of the tolerance that the best two constants leave of the mean errors, whichever single reading is left out, less what noise explains",
    ),
  scatter: z
    .strictObject({
      part: finite.describe("standard deviation of repeated readings over the tolerance"),
      least: finite.describe("its lower bound, 95 % one-sided"),
      degreesOfFreedom: finite,
    })
    .optional(),
  expected: z
    .strictObject({
      chanceOfPass: finite.describe("that new readings pass after a teach at the two ends, 0 to 1, by simulation"),
      draws: z.int(),
    })
    .optional(),
});

/** New constants for the controller, from the best line, and what they leave. */
const newConstants = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("values at counts"),
    countsLower: finite,
    countsUpper: finite,
    valueLower: finite.describe("controller value to be shown at countsLower"),
    valueUpper: finite,
    worst: errorLeft,
  }),
  z.strictObject({
    kind: z.literal("values in place of others"),
    offset: finite.describe("new constant = offset + gain · the constant that the controller holds now"),
    gain: finite,
    valueLower: finite.describe("new constant where the controller holds value_lower now"),
    valueUpper: finite,
    worst: errorLeft,
  }),
  z.strictObject({
    kind: z.literal("inputs at range ends"),
    of: z.enum(["signal", "counts"]),
    atLower: finite.describe("signal or counts at which the controller should be told range_lower"),
    atUpper: finite,
    worst: errorLeft,
  }),
]);

const reteachPhaseSchema = z.strictObject({
  sensor: correctedCurve.nullable().describe("of the judged quantity"),
  controller: correctedCurve
    .optional()
    .describe("of what the controller showed, where that is not the judged quantity"),
  newConstants: newConstants.nullable(),
  notDetermined: z.record(z.string(), z.string()),
});

/** What re-teaching or new constants could do, phase by phase. */
export const reteachSchema = z.strictObject({
  asFound: reteachPhaseSchema.optional(),
  asLeft: reteachPhaseSchema.optional(),
});

export type ReteachPhase = z.infer<typeof reteachPhaseSchema>;
export type CorrectedCurve = z.infer<typeof correctedCurve>;
export type ErrorLeftRecord = z.infer<typeof errorLeft>;
export type NewConstants = z.infer<typeof newConstants>;
