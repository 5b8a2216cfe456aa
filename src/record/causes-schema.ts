import * as z from "zod";
import type { CausePlace } from "../verdict/causes/finding.ts";

const finite = z.number();

/** Where in the loop a cause sits. */
export const causePlaces = [
  "sensor",
  "wiring",
  "input card",
  "scaling",
  "switched output",
  "rig",
  "readings",
] as const satisfies readonly CausePlace[];

const evidenceSchema = z.strictObject({
  name: z.string(),
  value: finite,
  unit: z.string(),
  standardUncertainty: finite.optional(),
});

/** A later program may know more causes than this one: whoever meets an unknown id has the title beside it. */
const namedCause = {
  id: z.string().min(1).describe("slug of the cause; it keeps its meaning for ever"),
  title: z.string().describe("the cause in words"),
};

const findingSchema = z.strictObject({
  ...namedCause,
  stage: z.enum(causePlaces),
  says: z.string().describe("what the numbers are consistent with: an opinion"),
  evidence: z.array(evidenceSchema),
  rivals: z.array(z.strictObject(namedCause)).describe("what the numbers do not exclude yet"),
  separatedBy: z.string().describe("the one measurement that would tell them apart"),
});

const noteSchema = z.strictObject({
  title: z.string(),
  says: z.string(),
  evidence: z.array(evidenceSchema),
  candidates: z.array(z.strictObject(namedCause)),
  separatedBy: z.string(),
});

const stageErrorSchema = z.strictObject({ percentSpan: finite, standardUncertainty: finite });

/** The robust line of the error of one stage on what the stage was given. */
const stageLineSchema = z.strictObject({
  stage: z.string(),
  readings: z.int(),
  excluded: z.int().describe("too far from the line to belong to it"),
  gain: finite,
  gainStandardUncertainty: finite,
  from: finite.describe("input at range_lower, in its unit"),
  to: finite.describe("input at range_upper, in its unit"),
  inputUnit: z.string(),
  errorAtLower: stageErrorSchema,
  errorAtUpper: stageErrorSchema,
  greatestResidual: finite.describe("percent of span"),
  zeroCrossing: z
    .strictObject({ value: finite, standardUncertainty: finite })
    .nullable()
    .describe("input at which the line has no error; null where the slope is not above twice its uncertainty"),
});

/** Readings that line, forecast and constants leave out though nobody rejected them. */
const setAsideSchema = z.strictObject({
  reading: z.int().describe("place among the readings of the phase, from 0"),
  row: z.int().describe("line of the table"),
  why: z.string().describe("railed, typing error, rows exchanged, wild reading or test point off"),
});

const phaseCausesSchema = z.strictObject({
  setAside: z
    .array(setAsideSchema)
    .optional()
    .describe("readings that line, forecast and constants leave out though nobody rejected them"),
  stageLines: z.array(stageLineSchema),
  findings: z.array(findingSchema),
  notes: z.array(noteSchema),
});

/** What each phase is consistent with, and what it cannot tell. */
export const causesSchema = z.strictObject({
  asFound: phaseCausesSchema.optional(),
  asLeft: phaseCausesSchema.optional(),
});

export type CausesRecord = z.infer<typeof causesSchema>;
export type PhaseCauses = z.infer<typeof phaseCausesSchema>;
export type FindingRecord = z.infer<typeof findingSchema>;
export type NamedCauseRecord = FindingRecord["rivals"][number];
export type EvidenceRecord = z.infer<typeof evidenceSchema>;
