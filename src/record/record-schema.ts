import * as z from "zod";
import { calibrationSchema, standardSchema } from "../model/calibration.ts";
import { instrumentSchema, outputSchema } from "../model/instrument.ts";
import { decisionRules } from "../model/instrument-words.ts";
import { tableNames } from "../model/table-names.ts";
import { amendmentSchema } from "./amendment-schema.ts";
import { candidatesSchema } from "./candidates-schema.ts";
import { causesSchema } from "./causes-schema.ts";
import { controllerLimitRecordSchema } from "./controller-limit-schema.ts";
import { impactSchema } from "./impact-schema.ts";
import { loopChecksSchema, setPointRowSchema } from "./loop-check-schema.ts";
import { overTheYearsSchema } from "./over-the-years-schema.ts";
import { overallSchema } from "./overall-schema.ts";
import { phaseSchema, type readingSchema, type sharesSchema } from "./phase-schema.ts";
import { recommendationSchema } from "./recommendation-schema.ts";
import { mostDraws, recordFormat } from "./record-format.ts";
import { recordSummarySchema } from "./record-summary-schema.ts";
import { reteachSchema } from "./reteach-schema.ts";
import { sealSchema, signOffSchema } from "./seal-schema.ts";
import { soundSchema } from "./sound-schema.ts";
import { switchingSchema } from "./switching-schema.ts";
import type { judgedPointSchema, statementSchema } from "./uncertainty-schema.ts";

const finite = z.number();

const sourceRow = z.strictObject({ file: z.string(), line: z.int(), cells: z.record(z.string(), z.string()) });

/** One calibration as data: everything that its page shows can be rebuilt from this. */
export const recordSchema = z.strictObject({
  schema: z.literal(recordFormat),
  software: z.strictObject({
    name: z.literal("spanwright"),
    version: z.string(),
    sha256: z
      .string()
      .regex(/^[0-9a-f]{64}$/u)
      .optional()
      .describe("SHA-256 of program.sha256, the list of the program's files; not there where it was not built whole"),
    selfTest: z
      .strictObject({ passed: z.int().min(0), of: z.int().min(1) })
      .optional()
      .describe(
        "published examples that the program computed before it wrote this, and how many came out as published",
      ),
  }),
  inputs: z.strictObject({
    files: z.array(
      z.strictObject({
        name: z.string(),
        sha256: z.string().regex(/^[0-9a-f]{64}$/u),
        byteLength: z.int(),
        encoding: z.string(),
        delimiter: z.string().nullable(),
        decimalMark: z.enum(["point", "comma"]),
        tables: z.array(z.enum(tableNames)).describe("that stood in it and were read so"),
        sheets: z
          .array(
            z.strictObject({
              table: z.enum(tableNames),
              name: z.string(),
              letters: z.record(z.string(), z.string()).describe("of the columns, by their names"),
            }),
          )
          .optional()
          .describe("of a spreadsheet: the sheet of each table, and the letters of its columns"),
      }),
    ),
    rows: z.strictObject({
      instruments: z.array(sourceRow),
      calibrations: z.array(sourceRow),
      standards: z.array(sourceRow),
      outputs: z.array(sourceRow),
      readings: z.array(sourceRow),
      loop_checks: z.array(sourceRow).optional().describe("only where there are any"),
      controller_limits: z.array(sourceRow).optional().describe("only where the tag has any"),
      trips: z.array(sourceRow).optional().describe("only where an output was tripped"),
      candidates: z.array(sourceRow).optional().describe("only where they are compared with the loop"),
    }),
  }),
  revision: z.int().min(1).describe("1 for the first issue; an amendment counts on"),
  amendment: amendmentSchema.optional().describe("from revision 2 on: why, and what changed"),
  history: z
    .array(recordSummarySchema)
    .optional()
    .describe("filed records of the tag before this one, oldest first, where a folder of them was given"),
  filedRate: z
    .strictObject({ inTolerance: z.int().min(0), of: z.int().min(0) })
    .optional()
    .describe("as-found results of all loops in that folder before this one: how many were in tolerance"),
  figureBasis: z.string(),
  decisionRule: z.strictObject({
    name: z.enum(decisionRules),
    guardFactor: finite.describe("guard band as a part of the expanded uncertainty"),
    minimumTestUncertaintyRatio: finite,
    prescribedBy: z.string().optional(),
    agreedOn: z.iso.date().optional(),
    givenForThisRun: z
      .strictObject({ name: z.enum(decisionRules).optional(), guardFactor: finite.optional() })
      .optional()
      .describe("what options of the command put in the place of the instrument's own"),
  }),
  falseAccept: z
    .strictObject({
      inToleranceRate: finite.describe(
        "percent of such loops that are found in tolerance: as the owner states it, or else by filedRate",
      ),
      trueRate: finite.optional().describe("percent truly in tolerance, with what measuring adds taken out"),
      spread: finite
        .optional()
        .describe(
          "standard deviation of the true errors, part of the tolerance; 0 where measuring alone explains the rate",
        ),
      results: finite.optional().describe("readings, or means, each of which has to pass"),
      testUncertaintyRatio: finite,
      guardMultiplier: finite,
      falseAccept: finite,
      falseReject: finite,
    })
    .optional()
    .describe("risks over all such loops, before any of them is measured"),
  monteCarloDraws: z.int().min(1).max(mostDraws).optional().describe("how many draws checked each budget"),
  monteCarloSeed: z.string().optional().describe("SHA-256 that the draws start from"),
  instrument: instrumentSchema,
  calibration: calibrationSchema.describe("the row of the calibration, read"),
  standards: z.array(standardSchema),
  outputs: z.array(outputSchema),
  phases: z.strictObject({ asFound: phaseSchema.optional(), asLeft: phaseSchema.optional() }),
  overall: overallSchema.optional().describe("what the record says of the loop, everywhere the same; absent in form 1"),
  switching: z.array(switchingSchema).optional().describe("switched outputs, where the tag has any"),
  loopChecks: loopChecksSchema.optional().describe("where the loop was checked, is a safety function or was bypassed"),
  controllerLimits: z
    .array(controllerLimitRecordSchema)
    .optional()
    .describe("alarms and trips of the controller, and what the error did to each"),
  setPointTable: z.array(setPointRowSchema).optional().describe("what belongs together along the loop"),
  causes: causesSchema.optional().describe("what the readings are consistent with: opinions"),
  sound: soundSchema.optional().describe("sound in air, for an ultrasonic sensor"),
  overTheYears: overTheYearsSchema
    .optional()
    .describe("over the filed records of the tag and this one, where history is there"),
  reteach: reteachSchema.optional().describe("what re-teaching or new constants could do"),
  impact: impactSchema.optional().describe("where the loop was not found in tolerance"),
  candidates: candidatesSchema.optional().describe("what could take the place of the sensor: a comparison"),
  recommendation: recommendationSchema.optional().describe("what to do with the loop: an opinion"),
  nextDue: z.iso.date().optional().describe("only where somebody agreed to the interval"),
  warnings: z.array(z.strictObject({ code: z.string(), place: z.string(), says: z.string() })),
});

/** A record as it is written: with the seal of its content, and the signatures under it. */
export const sealedRecordSchema = recordSchema.extend({ signOff: signOffSchema, seal: sealSchema });

export type CalibrationRecord = z.infer<typeof recordSchema>;
export type SealedRecord = z.infer<typeof sealedRecordSchema>;
export type PhaseRecord = z.infer<typeof phaseSchema>;
export type ReadingRecord = z.infer<typeof readingSchema>;
export type Shares = z.infer<typeof sharesSchema>;
export type JudgedPointRecord = z.infer<typeof judgedPointSchema>;
export type Statement = z.infer<typeof statementSchema>;
