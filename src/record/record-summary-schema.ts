import * as z from "zod";
import { adjustments } from "../model/calibration-words.ts";
import { distanceUnits } from "../model/instrument-words.ts";
import { overallWords } from "./overall-words.ts";
import { judgedPart } from "./phase-schema.ts";
import { statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();

const summaryPointSchema = z.strictObject({
  point: finite.describe("nominal position of the test point"),
  errorDistance: finite.describe("mean error of the worse direction"),
  expandedUncertainty: finite,
  combinedUncertainty: finite.optional(),
  effectiveDegreesOfFreedom: finite.nullable().optional().describe("null where they are unlimited"),
  certificates: z
    .array(z.strictObject({ standard: z.string(), certificate: z.string(), standardUncertainty: finite }))
    .optional()
    .describe(
      "what each certificate contributes to the error: it drops out of a change between two visits with the same",
    ),
  toleranceLow: finite,
  toleranceHigh: finite,
  statement: statementSchema,
});

/** One phase of an earlier record, as much as drift, history and impact need; distances in the record's unit. */
export const phaseSummarySchema = z.strictObject({
  statement: statementSchema.nullable().describe("the worst of the loop's own and of its switched outputs"),
  outputs: statementSchema.nullable().describe("the worst of the switched outputs; null where none was judged"),
  worst: z
    .strictObject({
      of: judgedPart,
      reference: finite,
      errorDistance: finite,
      errorPercentSpan: finite,
    })
    .nullable()
    .describe("the worst reading"),
  worstUncertainty: finite.nullable().describe("expanded uncertainty at the worst test point"),
  zeroError: finite.nullable().describe("percent of span"),
  spanError: finite.nullable().describe("percent of span"),
  points: z.array(summaryPointSchema).describe("of the part of the loop that `pointsOf` names"),
});

/** One record in short, by which a later one of the same tag, a history and a register know it. */
export const recordSummarySchema = z.strictObject({
  tag: z.string(),
  calibration: z.string(),
  revision: z.int().min(1),
  sha256: z.string().describe("of the seal"),
  performedOn: z.iso.date().nullable(),
  distanceUnit: z.enum(distanceUnits),
  rangeLower: finite,
  rangeUpper: finite,
  serial: z.string().nullable().describe("serial number of the sensor"),
  adjustment: z.enum(adjustments).nullable(),
  pointsOf: z
    .enum(["sensor", "controller"])
    .nullable()
    .describe(
      "the whole loop up to the controller where its values were read in every phase, else the sensor; null where spanwright 0.1.0 did not say",
    ),
  asFound: phaseSummarySchema.nullable(),
  asLeft: phaseSummarySchema.nullable(),
  nextDue: z.iso.date().nullable(),
  overall: z
    .strictObject({ word: z.enum(overallWords), missing: z.array(z.string()) })
    .optional()
    .describe("what the record says of the loop as a whole, and why it is not complete; absent in form 1"),
});

export type PhaseSummary = z.infer<typeof phaseSummarySchema>;
export type RecordSummary = z.infer<typeof recordSummarySchema>;
