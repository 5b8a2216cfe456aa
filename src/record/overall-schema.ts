import * as z from "zod";
import type { Missing } from "../verdict/completeness/missing-points.ts";
import { overallWords } from "./overall-words.ts";
import { phaseNames } from "./phase-name.ts";
import { statementSchema } from "./uncertainty-schema.ts";

/** Why a phase, or a record, is no whole proof. */
export const missingSchema = z.strictObject({
  about: z.enum([
    "points",
    "ends",
    "stage",
    "as-found points",
    "adjustment",
    "copies",
    "uncertainty",
    "output",
    "restored",
    "loop check",
  ] satisfies Missing["about"][]),
  says: z.string(),
});

/** What the record says of the loop as it was left, or found where nothing was done: the same everywhere. */
export const overallSchema = z.strictObject({
  word: z
    .enum(overallWords)
    .describe("the worst of loop, outputs, loop check and completeness, from best to worst in this order"),
  of: z.enum(phaseNames).nullable().describe("the state that it speaks of; null where nothing was read or tried"),
  loop: statementSchema.nullable().describe("at the end of the loop"),
  outputs: statementSchema.nullable().describe("the worst of the switched outputs and of their wiring"),
  loopCheck: z.enum(["pass", "fail"]).nullable().describe("null where nothing was looked at"),
  complete: z.boolean(),
  missing: z.array(missingSchema).describe("why it is not complete"),
});

export type OverallRecord = z.infer<typeof overallSchema>;
