import * as z from "zod";
import { judgedPart } from "./phase-schema.ts";
import { statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();

const impactRowSchema = z.strictObject({
  name: z.string(),
  distance: finite,
  errorDistance: finite.nullable().describe("the worse of rising and falling; null beyond the test points"),
  expandedUncertainty: finite.nullable(),
  errorValue: finite.nullable().describe("in the controller's unit; null where it is not scaled"),
  toleranceLow: finite,
  toleranceHigh: finite,
  isOutside: z.boolean().nullable(),
});

/** A loop that was found out of tolerance: since when, how far, where, and what was decided about it. */
export const impactSchema = z.strictObject({
  statement: statementSchema,
  since: z
    .strictObject({ performedOn: z.iso.date(), calibration: z.string(), revision: z.int() })
    .nullable()
    .describe("the last filed record that left the loop in tolerance"),
  until: z.iso.date().nullable(),
  of: judgedPart.describe("the part of the loop that the errors are those of"),
  rows: z.array(impactRowSchema).describe("range ends, quarter points and set points"),
  outside: z.array(z.strictObject({ from: finite, to: finite })).describe("parts of the range, distance"),
  faults: z.int().describe("readings inside the range that reported a fault"),
  decision: z.string().nullable(),
  decidedBy: z.string().nullable(),
  decidedOn: z.iso.date().nullable(),
  notDetermined: z.record(z.string(), z.string()),
});

export type ImpactRecord = z.infer<typeof impactSchema>;
