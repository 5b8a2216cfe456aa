import * as z from "zod";
import { directions } from "../model/calibration-words.ts";
import { judgedParts, type ShareName } from "../model/loop-stages.ts";
import { missingSchema } from "./overall-schema.ts";
import { judgedPointSchema, statementSchema, uncertainLineSchema } from "./uncertainty-schema.ts";

const direction = z.enum(directions);
const finite = z.number();
/** The first stage that was read, or everything up to and with a later one. */
export const judgedPart = z.enum(judgedParts);

/** Error of each stage of the loop, in distance; those that exist add up to the error of the last stage. */
export const sharesSchema = z.strictObject({
  sensor: finite.optional(),
  wiring: finite.optional(),
  inputCard: finite.optional().describe("from the signal at the card where that was read, else from the sensor's"),
  scaling: finite.optional(),
  sensorAndWiring: finite.optional(),
  sensorAndInputCard: finite.optional(),
  inputCardAndScaling: finite.optional(),
  sensorToController: finite.optional(),
} satisfies Record<ShareName, unknown>);

/** One reading and what follows from it alone. */
export const readingSchema = z.strictObject({
  row: z.int().describe("line of the file of readings"),
  cycle: z.int().optional(),
  direction,
  point: finite.describe("nominal position of the test point"),
  reference: finite,
  signal: finite.optional(),
  signalAtCard: finite.optional().describe("the same signal at the terminals of the input card"),
  counts: finite.optional(),
  value: finite.optional(),
  time: z.string().optional(),
  remark: z.string().optional(),
  indicated: finite.optional().describe("distance that the judged quantity stands for"),
  errorDistance: finite.optional().describe("indicated minus reference"),
  errorSignal: finite.optional(),
  errorPercentSpan: finite.optional(),
  wiringErrorDistance: finite.optional().describe("distance of the signal at the card minus reference"),
  inputCardErrorDistance: finite.optional().describe("distance of the raw counts minus reference"),
  loopErrorValue: finite.optional().describe("controller value minus ideal controller value"),
  loopErrorDistance: finite.optional(),
  shares: sharesSchema.optional(),
  toleranceLow: finite.describe("lower limit of the error at this reading, distance"),
  toleranceHigh: finite,
  verdict: z
    .enum(["pass", "fail"])
    .optional()
    .describe("inside the tolerance or not at the last stage that was read of it, whatever the decision rule"),
  leftOut: z.string().optional().describe("why the reading is in no figure"),
  railed: z
    .enum(["low", "high"])
    .optional()
    .describe("the end of the signal at which it stands: at or beyond, and no number"),
});

const fit = z.strictObject({
  n: z.int(),
  slope: finite,
  intercept: finite,
  slopeStdError: finite.nullable(),
  interceptStdError: finite.nullable(),
  residualStdDev: finite.nullable(),
  rSquared: finite.nullable(),
});

const lineError = z.strictObject({
  percentSpan: finite,
  standardUncertainty: finite.nullable().describe("of the fit alone"),
  combinedStandardUncertainty: finite
    .nullable()
    .describe(
      "of scatter, steps, cycles, measured or assumed, and standards; widened for few degrees of freedom, so that ±2u covers 95 %",
    ),
  standardsUncertainty: finite.optional().describe("part of it that is of the standards: all readings share it"),
  effectiveDegreesOfFreedom: finite.nullable().optional().describe("of it before it was widened; null: unlimited"),
});

/** One phase: its readings, its figures, and what was decided. */
export const phaseSchema = z.strictObject({
  readings: z.array(readingSchema),
  judged: z.enum(["signal", "counts", "value"]).describe("the quantity that the figures and the error stand for"),
  counted: z.strictObject({ readings: z.int(), used: z.int(), leftOut: z.int(), points: z.int(), cycles: z.int() }),
  decimals: z
    .strictObject({ reference: z.int(), signal: z.int(), counts: z.int(), value: z.int() })
    .describe("most decimals that were typed"),
  fit: fit.nullable(),
  zeroError: lineError.nullable(),
  spanError: lineError.nullable(),
  inaccuracy: z.strictObject({ positive: finite, negative: finite }).nullable(),
  meanAbsoluteError: z.strictObject({ percentSpan: finite, distance: finite }).nullable().optional(),
  maximumMeasuredError: z.strictObject({ percentSpan: finite, point: finite, direction }).nullable(),
  linearity: z.strictObject({
    independent: finite.nullable(),
    terminal: finite.nullable(),
    zeroBased: finite.nullable(),
    leastSquares: finite.nullable(),
  }),
  hysteresis: z
    .strictObject({
      percentSpan: finite,
      point: finite,
      withinOneCycle: z
        .strictObject({ percentSpan: finite, point: finite, cycle: z.int() })
        .nullable()
        .describe("greatest difference within one cycle, as ANSI/ISA-51.1 takes it"),
    })
    .nullable(),
  repeatability: z
    .strictObject({
      percentSpan: finite,
      point: finite,
      direction,
      pooledStdDev: finite,
      degreesOfFreedom: z.int(),
    })
    .nullable(),
  points: z.array(judgedPointSchema),
  endOf: judgedPart.describe("the part of the loop that its end, the last stage that was read, stands for"),
  endPoints: z
    .array(judgedPointSchema)
    .optional()
    .describe("the same at the end of the loop, where that is another stage than the first; the loop is judged there"),
  loopError: z
    .strictObject({
      percentSpan: finite,
      distance: finite,
      value: finite,
      row: z.int(),
      shares: sharesSchema,
    })
    .nullable()
    .describe("greatest loop error of any reading, and where in the loop it arises"),
  worst: z
    .strictObject({
      of: judgedPart,
      row: z.int(),
      errorDistance: finite,
      errorPercentSpan: finite,
      partOfTolerance: finite
        .nullable()
        .describe("error divided by the tolerance on its side; null where that is zero and the error is not"),
    })
    .nullable(),
  worstPoint: z
    .strictObject({ of: judgedPart, index: z.int() })
    .nullable()
    .describe(
      "the deciding point with the worst statement, then the greatest risk: its place in points for the sensor, else in endPoints",
    ),
  uncertainLine: uncertainLineSchema.nullable().describe("line through readings of known uncertainty"),
  verdicts: z
    .strictObject({
      sensor: statementSchema.nullable(),
      wiring: statementSchema.optional(),
      inputCard: statementSchema.optional(),
      controller: statementSchema.nullable(),
    })
    .describe("a word for each stage that was read, everything before it in the loop included"),
  verdict: statementSchema.nullable().describe("the word of the loop: at the last stage that was read"),
  complete: z.boolean().describe("whether enough was read and done for the word to stand for the whole loop"),
  missing: z.array(missingSchema).describe("why it is not complete; empty where it is"),
  notDetermined: z.record(z.string(), z.string()).describe("why a figure is null, by the figure's name"),
});
