import * as z from "zod";
import { directions } from "../model/calibration-words.ts";
import { statements } from "../model/statement.ts";

const finite = z.number();
/** Degrees of freedom; null where they are unlimited. */
const degreesOfFreedom = z.number().nullable();

/** What is said of a test point, of a part of the loop, of a phase. */
export const statementSchema = z.enum(statements);

const budgetLine = z.strictObject({
  source: z.string(),
  value: finite,
  unit: z.string(),
  distribution: z.enum(["normal", "rectangular", "triangular", "arcsine", "trapezoidal"]),
  divisor: finite,
  sensitivity: finite.describe("distance per unit of the value"),
  standardUncertainty: finite.describe("distance"),
  degreesOfFreedom,
  share: finite.describe("part of the variance, 0 to 1"),
});

const monteCarlo = z.strictObject({
  draws: z.int(),
  standardUncertainty: finite,
  halfWidth: finite,
  low: finite,
  high: finite,
  agrees: z.boolean(),
  reason: z.string().nullable(),
});

/** The uncertainty of the worse direction's mean error at one test point, and what is said of it; distance. */
export const judgedPointSchema = z.strictObject({
  point: finite,
  reference: finite.describe("mean reference distance"),
  up: finite.nullable().describe("mean error of the rising readings, percent of span"),
  down: finite.nullable(),
  mean: finite,
  direction: z.enum(directions),
  errorDistance: finite,
  errorPercentSpan: finite,
  toleranceLow: finite,
  toleranceHigh: finite,
  budget: z.strictObject({
    lines: z.array(budgetLine),
    combinedUncertainty: finite,
    effectiveDegreesOfFreedom: degreesOfFreedom,
    coverageProbability: finite,
    coverageBasis: z.string(),
    sharing: z
      .strictObject({ all: finite, cycle: finite, reading: finite })
      .optional()
      .describe(
        "standard uncertainty of one reading, distance: shared by all readings, by those of its cycle, its own",
      ),
    missing: z.array(z.string()).describe("what the workbook does not give, in words"),
  }),
  expandedUncertainty: finite,
  coverageFactor: finite,
  guardBand: finite,
  whyNotManaged: z.string().optional().describe("a guard band of U takes the place of the managed one, and why"),
  acceptanceLow: finite.nullable().describe("null where no error can pass"),
  acceptanceHigh: finite.nullable(),
  specificRisk: finite.describe("probability that the true error lies outside the tolerance"),
  testUncertaintyRatio: finite,
  statement: statementSchema,
  monteCarlo: monteCarlo.optional(),
});

/** A straight line through readings of known uncertainty, its chi-squared test, and its inverse. */
export const uncertainLineSchema = z.strictObject({
  method: z.enum(["errors in both", "weighted"]),
  slope: finite,
  intercept: finite,
  slopeStandardUncertainty: finite,
  interceptStandardUncertainty: finite,
  covariance: finite,
  chiSquared: finite,
  degreesOfFreedom: z.int(),
  chiSquaredLimit: finite.describe("95 % limit"),
  test: z.enum(["F", "chi-squared"]).optional().describe("F where the scatter is an estimate"),
  scatterDegreesOfFreedom: finite.optional().describe("of the scatter that an F test rests on"),
  isStraight: z.boolean(),
  inverse: z
    .array(z.strictObject({ output: finite, reference: finite, standardUncertainty: finite }))
    .describe("empty where the readings do not lie on one straight line"),
});
