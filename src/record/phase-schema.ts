import * as z from "zod";
import { directions } from "../model/calibration.ts";
import type { ShareName } from "../model/loop-stages.ts";
import { judgedPointSchema, statementSchema, uncertainLineSchema } from "./uncertainty-schema.ts";

const direction = z.enum(directions);
const finite = z.number();

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
  loopErrorValue: finite.optional().describe("controller value minus ideal controller value"),
  loopErrorDistance: finite.optional(),
  shares: sharesSchema.optional(),
  toleranceLow: finite.describe("lower limit of the error at this reading, distance"),
  toleranceHigh: finite,
  verdict: z.enum(["pass", "fail"]).optional().describe("inside the tolerance or not, whatever the decision rule"),
  leftOut: z.string().optional().describe("why the reading is in no figure"),
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
  combinedStandardUncertainty: finite.nullable().describe("of the fit and of what the readings share"),
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
  controllerPoints: z.array(judgedPointSchema).optional().describe("the same of what the controller showed"),
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
      of: z.enum(["sensor", "controller"]),
      row: z.int(),
      errorDistance: finite,
      errorPercentSpan: finite,
      partOfTolerance: finite
        .nullable()
        .describe("error divided by the tolerance on its side; null where that is zero and the error is not"),
    })
    .nullable(),
  worstPoint: z
    .strictObject({ of: z.enum(["sensor", "controller"]), index: z.int() })
    .nullable()
    .describe(
      "the judged point with the worst statement, then the greatest risk: its place in points or controllerPoints",
    ),
  uncertainLine: uncertainLineSchema.nullable().describe("line through readings of known uncertainty"),
  verdicts: z.strictObject({ sensor: statementSchema.nullable(), controller: statementSchema.nullable() }),
  verdict: statementSchema.nullable(),
  notDetermined: z.record(z.string(), z.string()).describe("why a figure is null, by the figure's name"),
});
