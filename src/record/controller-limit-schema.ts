import * as z from "zod";
import { phaseNames } from "./phase-name.ts";

const finite = z.number();

/** A limit of the controller: where it is meant to act, and where it acts with the error that was found. */
export const controllerLimitRecordSchema = z.strictObject({
  row: z.int().describe("line of the file of controller limits"),
  limit: z.string(),
  kind: z.enum(["alarm", "trip"]).optional(),
  value: finite.describe("of the controller, or a distance where nothing scales it"),
  acts: z.enum(["above", "below"]).describe("side of the value on which it acts"),
  delay: finite.optional().describe("seconds"),
  deadBand: finite.optional().describe("how far the value has to come back"),
  finalAction: z.string().optional().describe("what it does in the end"),
  meant: finite.describe("distance at which the value should be reached"),
  direction: z.enum(["approach", "recede"]).describe("way of the target by which it comes about"),
  found: z
    .array(
      z.strictObject({
        phase: z.enum(phaseNames),
        actedAt: finite.nullable().describe("distance at which the value is reached, by the mean errors"),
        expandedUncertainty: finite.nullable(),
        notDetermined: z.string().optional(),
      }),
    )
    .describe("where it acts with the errors of each phase"),
});

export type ControllerLimitRecord = z.infer<typeof controllerLimitRecordSchema>;
