import * as z from "zod";
import { tripDirections } from "../model/calibration-words.ts";
import { outputSchema } from "../model/instrument.ts";
import { judgedPointSchema, statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();
const direction = z.enum(tripDirections);
const passOrFail = z.enum(["pass", "fail"]);
const reasons = z.record(z.string(), z.string()).describe("why a figure is null, by the figure's name");

const tripMean = z.strictObject({
  mean: finite,
  least: finite,
  greatest: finite,
  count: z.int(),
  standardDeviation: finite.nullable(),
});

/** A length along the axis against its limit. */
const travel = {
  distance: finite,
  percent: finite.describe("of the operating distance"),
  limitPercent: finite,
  limitFrom: z.enum(["outputs table", "IEC 60947-5-2, from memory"]),
  statement: passOrFail,
};

const setPoint = z.strictObject({
  direction: direction.describe("the direction that matters"),
  error: finite.describe("switching distance minus set point, distance"),
  budget: judgedPointSchema.shape.budget,
  expandedUncertainty: finite,
  coverageFactor: finite,
  decision: z
    .strictObject({
      toleranceLow: finite,
      toleranceHigh: finite,
      guardBand: finite,
      acceptanceLow: finite.nullable(),
      acceptanceHigh: finite.nullable(),
      specificRisk: finite,
      testUncertaintyRatio: finite,
      statement: statementSchema,
    })
    .nullable(),
});

/** The set-point error in two parts that add up to it. */
const shares = z.strictObject({
  analogErrorDistance: finite.describe("error of the analog value at the set point, indicated minus reference"),
  shift: finite.describe("what the analog value has too, as an error of the set point: its opposite"),
  shiftUncertainty: finite,
  teach: finite.describe("what the switch has for itself"),
  teachUncertainty: finite,
  consistentWith: z.enum(["teach", "shift", "teach and shift", "neither for certain"]),
});

/** One switched output in one phase; distances in the instrument's unit. */
export const switchedPhaseSchema = z.strictObject({
  trips: z.array(
    z.strictObject({
      row: z.int().describe("line of the file of trips"),
      direction,
      cycle: z.int().optional(),
      reference: finite,
      isCounted: z.boolean().describe("the first of its run; only these are in the means"),
    }),
  ),
  decimals: z.int().describe("most decimals of a reference that were typed"),
  operating: tripMean.nullable().describe("on approach"),
  release: tripMean.nullable().describe("on recede"),
  differential: z
    .strictObject({
      ...travel,
      greatestOfOneCycle: z.strictObject({ distance: finite, cycle: z.int() }).nullable(),
    })
    .nullable(),
  repeat: z.strictObject(travel).nullable(),
  chatter: z
    .strictObject({
      runs: z.array(z.strictObject({ direction, cycle: z.int(), transitions: z.int() })),
      statement: passOrFail,
    })
    .nullable(),
  setPoint: setPoint.nullable(),
  shares: shares.nullable(),
  statement: statementSchema
    .nullable()
    .describe(
      "the worst of set point, differential travel, repeat and chatter; null rather than a pass without a set point",
    ),
  notDetermined: reasons,
});

const voltage = z.strictObject({
  volts: finite,
  low: finite,
  high: finite,
  readAs: z.enum(["0", "1", "neither for certain", "outside the range of the input"]),
  statement: passOrFail,
});

/** How an output and the controller's input fit; it holds for every phase. */
const wiringSchema = z.strictObject({
  inputMatch: z.strictObject({ needs: z.enum(["sinking", "sourcing"]), statement: passOrFail }).nullable(),
  onVoltage: voltage.nullable(),
  offVoltage: voltage.nullable(),
  functionMatch: z
    .strictObject({
      seen: z.enum(["NO", "NC"]).describe("normally open or normally closed, by the trips"),
      statement: passOrFail.nullable(),
    })
    .nullable()
    .optional()
    .describe("what the trips show of the function; absent where no state after a trip is stated"),
  statement: passOrFail.nullable().describe("the worst of them"),
  notDetermined: reasons,
});

/** One switched output of the tag: its row, its wiring, and what its trips say. */
export const switchingSchema = z.strictObject({
  output: outputSchema,
  wiring: wiringSchema,
  phases: z.strictObject({ asFound: switchedPhaseSchema.optional(), asLeft: switchedPhaseSchema.optional() }),
});

export type SwitchingRecord = z.infer<typeof switchingSchema>;
export type SwitchedPhaseRecord = z.infer<typeof switchedPhaseSchema>;
export type WiringRecord = z.infer<typeof wiringSchema>;
