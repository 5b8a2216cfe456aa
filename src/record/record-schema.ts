import * as z from "zod";
import { calibrationSchema, directions, standardSchema } from "../model/calibration.ts";
import { instrumentSchema, outputSchema } from "../model/instrument.ts";

/** The form of a record's JSON. Names bind: a published record is read by them years later. */
export const recordFormat = "spanwright-record/1";

const direction = z.enum(directions);
const finite = z.number();
const verdict = z.enum(["pass", "conditional pass", "conditional fail", "fail"]);

/** Error of each stage of the loop, in distance; those that exist add up to the error of the last stage. */
const shares = z.strictObject({
  sensor: finite.optional(),
  inputCard: finite.optional(),
  scaling: finite.optional(),
  sensorAndInputCard: finite.optional(),
  inputCardAndScaling: finite.optional(),
  sensorToController: finite.optional(),
});

const readingRecord = z.strictObject({
  row: z.int().describe("line of the file of readings"),
  cycle: z.int().optional(),
  direction,
  point: finite.describe("nominal position of the test point"),
  reference: finite,
  signal: finite.optional(),
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
  shares: shares.optional(),
  toleranceLow: finite.describe("lower limit of the error at this reading, distance"),
  toleranceHigh: finite,
  verdict: verdict.optional(),
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

const lineError = z.strictObject({ percentSpan: finite, standardUncertainty: finite.nullable() });

const phaseRecord = z.strictObject({
  readings: z.array(readingRecord),
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
  points: z.array(
    z.strictObject({
      point: finite,
      reference: finite.describe("mean reference distance"),
      up: finite.nullable().describe("mean error of the rising readings, percent of span"),
      down: finite.nullable(),
      mean: finite,
    }),
  ),
  loopError: z
    .strictObject({
      percentSpan: finite,
      distance: finite,
      value: finite,
      row: z.int(),
      shares,
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
  verdicts: z.strictObject({ sensor: verdict.nullable(), controller: verdict.nullable() }),
  verdict: verdict.nullable(),
  notDetermined: z.record(z.string(), z.string()).describe("why a figure is null, by the figure's name"),
});

const sourceRow = z.strictObject({ file: z.string(), line: z.int(), cells: z.record(z.string(), z.string()) });

/** One calibration as data: everything that its page shows can be rebuilt from this. */
export const recordSchema = z.strictObject({
  schema: z.literal(recordFormat),
  software: z.strictObject({ name: z.literal("spanwright"), version: z.string() }),
  inputs: z.strictObject({
    files: z.array(
      z.strictObject({
        name: z.string(),
        sha256: z.string().regex(/^[0-9a-f]{64}$/u),
        byteLength: z.int(),
        encoding: z.string(),
        delimiter: z.string().nullable(),
        decimalMark: z.enum(["point", "comma"]),
      }),
    ),
    rows: z.strictObject({
      instruments: z.array(sourceRow),
      calibrations: z.array(sourceRow),
      standards: z.array(sourceRow),
      outputs: z.array(sourceRow),
      readings: z.array(sourceRow),
    }),
  }),
  figureBasis: z.string(),
  decisionRule: z.strictObject({ name: z.literal("simple acceptance"), prescribedBy: z.string().optional() }),
  instrument: instrumentSchema,
  calibration: calibrationSchema,
  standards: z.array(standardSchema),
  outputs: z.array(outputSchema),
  phases: z.strictObject({ asFound: phaseRecord.optional(), asLeft: phaseRecord.optional() }),
  nextDue: z.iso.date().optional().describe("only where somebody agreed to the interval"),
  warnings: z.array(z.strictObject({ code: z.string(), place: z.string(), says: z.string() })),
});

export type CalibrationRecord = z.infer<typeof recordSchema>;
export type PhaseRecord = z.infer<typeof phaseRecord>;
export type ReadingRecord = z.infer<typeof readingRecord>;
export type Shares = z.infer<typeof shares>;
export type Verdict = z.infer<typeof verdict>;
