import * as z from "zod";
import { adjustments } from "../model/calibration.ts";

const finite = z.number();

const resultSchema = z.strictObject({
  calibration: z.string(),
  performedOn: z.iso.date(),
  phase: z.enum(["asFound", "asLeft"]),
  stretch: z.int().min(0).describe("0 up to the first adjustment, then counted on"),
  isFitted: z.boolean().describe("belongs to the last stretch and is no repeat of another result of its record"),
  point: finite,
  errorDistance: finite,
  expandedUncertainty: finite,
  toleranceLow: finite,
  toleranceHigh: finite,
});

const fitSchema = z.strictObject({
  count: z.int(),
  from: z.iso.date(),
  until: z.iso.date(),
  perYear: finite.describe("distance a year, least squares since the last adjustment"),
  perYearLow: finite.describe("95 % confidence interval"),
  perYearHigh: finite,
  residualStdDev: finite,
  meets: z
    .strictObject({ limit: z.enum(["upper", "lower"]), on: z.iso.date() })
    .nullable()
    .describe("first day on which the 95 % prediction band meets a limit; null where not within 20 years"),
});

const driftPointSchema = z.strictObject({
  point: finite,
  toleranceLow: finite.describe("of the latest result"),
  toleranceHigh: finite,
  results: z.array(resultSchema),
  fit: fitSchema.nullable(),
  notDetermined: z.record(z.string(), z.string()),
});

/** The errors of a loop over its filed records and the one at hand: how they drift, and when they meet a limit. */
export const driftSchema = z.strictObject({
  points: z.array(driftPointSchema),
  answer: z.int().nullable().describe("which of them meets a limit first, or shows most; null where there is none"),
  forecast: z
    .array(z.strictObject({ on: z.iso.date(), value: finite, low: finite, high: finite }))
    .describe("line and 95 % prediction band at that point; empty where nothing is fitted"),
  worst: z
    .array(z.strictObject({ ...resultSchema.shape, partOfTolerance: finite.nullable() }))
    .describe("the test point that used up most of its tolerance, one for each phase"),
  breaks: z.array(
    z.strictObject({
      calibration: z.string(),
      performedOn: z.iso.date().nullable(),
      adjustment: z.enum(adjustments).nullable().describe("null where it is not stated and as left was measured"),
    }),
  ),
  reliability: z
    .strictObject({ inTolerance: z.int(), of: z.int(), low: finite, high: finite })
    .nullable()
    .describe("found in tolerance, with its two-sided 95 % interval by Clopper and Pearson"),
  anotherLoop: z.int().describe("earlier records of another range or unit, left out"),
  withoutDay: z.int().describe("records whose day is not stated, left out"),
});

export type DriftRecord = z.infer<typeof driftSchema>;
export type DriftPointRecord = DriftRecord["points"][number];
export type DriftResult = DriftPointRecord["results"][number];
