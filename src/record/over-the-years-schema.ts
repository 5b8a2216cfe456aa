import * as z from "zod";
import { adjustments } from "../model/calibration-words.ts";
import { statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();
const interval = { low: finite, high: finite };

/** The mean error of the worse direction at the place whose drift is the answer. */
const pointSchema = z.strictObject({
  errorDistance: finite,
  expandedUncertainty: finite,
  toleranceLow: finite,
  toleranceHigh: finite,
});

const stateSchema = z.strictObject({
  statement: statementSchema.nullable(),
  point: pointSchema.nullable().describe("null where nothing was measured at the place"),
  worst: z
    .strictObject({ point: finite, ...pointSchema.shape, partOfTolerance: finite.nullable() })
    .nullable()
    .describe("the test point that took up the most of its tolerance; null where none was judged"),
});

const recordRowSchema = z.strictObject({
  calibration: z.string(),
  revision: z.int(),
  performedOn: z.iso.date(),
  adjustment: z.enum(adjustments).nullable(),
  isAdjusted: z.boolean().describe("the line of drift breaks here"),
  asFound: stateSchema.nullable(),
  asLeft: stateSchema.nullable(),
  change: z
    .strictObject({
      errorDistance: finite.describe("as found minus as left of the record before"),
      expandedUncertainty: finite.describe("without what the same certificates contribute to both"),
      sameStandards: z.array(z.string()).optional().describe("whose certificate was the same at both visits"),
      perYear: finite.nullable().describe("null where both are of one day"),
    })
    .nullable(),
});

const placeSchema = z.strictObject({
  kind: z.enum(["test point", "line at the lower end", "line at the upper end"]),
  distance: finite,
  toleranceLow: finite,
  toleranceHigh: finite,
  records: z.int().describe("since the last adjustment"),
  drift: z
    .strictObject({
      perYear: finite,
      ...interval,
      residualStdDev: finite.describe("of the errors at this place alone"),
      degreesOfFreedom: z.int().describe("of the same: records less two"),
      scatter: z
        .strictObject({ standardDeviation: finite, degreesOfFreedom: finite })
        .optional()
        .describe("of a single result, pooled over the test points: what interval and prediction band rest on"),
    })
    .nullable()
    .describe("distance a year, with its 95 % confidence interval"),
  meets: z
    .strictObject({ on: z.iso.date(), limit: z.enum(["upper", "lower"]), isAlready: z.boolean() })
    .nullable()
    .describe("first day on which the prediction band meets a limit; null where none within 20 years, or no drift"),
  isEarly: z.boolean().optional().describe("true where the forecast rests on fewer than four records"),
  notDetermined: z.record(z.string(), z.string()),
});

const proposalSchema = {
  months: z.int().describe("proposed, never applied by itself"),
  on: z.iso.date().nullable().describe("day that would come of it"),
};

const settingsSchema = z.strictObject({
  extendWithin: finite,
  extendAfter: finite.optional().describe("results in a row that a longer interval asks for; one where it is absent"),
  extendBy: finite,
  shortenConditionalBy: finite,
  shortenBy: finite,
  fullInterval: finite,
  leastMonths: finite,
  mostMonths: finite,
});

/** A loop over its filed records: drift, forecast, proposed intervals, observed reliability. */
export const overTheYearsSchema = z.strictObject({
  records: z.array(recordRowSchema).describe("oldest first; errors at the leading place"),
  leftOut: z.array(z.string()).describe("records that are not taken, and why"),
  leading: z.int().nullable().describe("which of the places: the test point whose forecast meets a limit first"),
  places: z.array(placeSchema),
  band: z
    .array(z.strictObject({ on: z.iso.date(), value: finite, ...interval }))
    .describe("95 % prediction band at the leading place, to draw it"),
  reliability: z
    .strictObject({ inTolerance: z.int(), of: z.int(), rate: finite, ...interval })
    .nullable()
    .describe("found in tolerance at the end of an interval, with the two-sided 95 % Clopper–Pearson interval"),
  staircase: z
    .strictObject({
      ...proposalSchema,
      reason: z.enum([
        "well inside",
        "well inside, not often enough",
        "inside, but not well",
        "only just accepted",
        "out of tolerance",
        "calibrated early",
        "no test point judged",
      ]),
      from: z.int().describe("months so far"),
      isStated: z.boolean().describe("that many months are the interval as stated, not the time that passed"),
      factor: finite,
      wellInside: z.int().optional().describe("results in a row, the last one too, well inside after such an interval"),
      days: z.int().describe("that had passed"),
      asFound: statementSchema,
      partOfTolerance: finite.nullable().describe("of the mean error that takes up the most of it"),
    })
    .nullable(),
  controlChart: z
    .strictObject({
      ...proposalSchema,
      cap: z.enum(["longest"]).nullable(),
      predicted: z
        .strictObject({ value: finite, ...interval })
        .nullable()
        .describe("on that day, with the prediction band"),
    })
    .nullable(),
  settings: settingsSchema,
  notDetermined: z.record(z.string(), z.string()),
});

export type OverTheYears = z.infer<typeof overTheYearsSchema>;
export type PlaceOverTheYears = OverTheYears["places"][number];
export type RecordOverTheYears = OverTheYears["records"][number];
