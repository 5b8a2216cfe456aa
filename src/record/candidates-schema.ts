import * as z from "zod";
import type { FitResult } from "../verdict/replacement/fit-cell.ts";

const finite = z.number();
const result = z.enum(["fits", "fits with a change", "cannot be told", "does not fit"] satisfies FitResult[]);

const fitCell = z.strictObject({
  demand: z.string(),
  result,
  needs: z.string().describe("what the loop needs; the same for every candidate"),
  offers: z.string(),
  reason: z.string(),
});

const candidateFit = z.strictObject({
  row: z.int().describe("line of the file of candidates"),
  candidate: z.string(),
  overall: result.describe("the worst of its cells"),
  cells: z.array(fitCell).describe("the same demands in the same order for every candidate"),
  supply: z
    .strictObject({
      sparePart: z.string().optional().describe("number of the part in the stores, or that there is none"),
      leadTime: finite.optional().describe("days"),
      price: z.string().optional().describe("as typed, with its currency"),
      indicators: z.string().optional().describe("lights or display"),
    })
    .optional()
    .describe("what its row says of getting one; nothing is compared with it"),
  accuracy: z
    .strictObject({
      reference: finite.describe("the end of the range where accuracy and tolerance are closest"),
      accuracy: finite.describe("greatest error that its data state there"),
      tolerance: finite.describe("the lesser side of the tolerance there"),
      ratio: finite.describe("tolerance over accuracy"),
      standardsUncertainty: finite.nullable().describe("U of the standards alone, k = 2"),
      together: finite.nullable().describe("root of the squares of accuracy and U"),
    })
    .nullable()
    .describe("distances in the instrument's unit; null where the accuracy is not known"),
});

/** What could take the place of the sensor: a comparison of what the tables state, and no recommendation. */
export const candidatesSchema = z.strictObject({
  because: z.enum(["the loop does not pass", "replacing is recommended"]),
  fits: z.array(candidateFit).describe("best first"),
  notCompared: z.array(z.strictObject({ demand: z.string(), columns: z.string() })),
});

export type CandidatesRecord = z.infer<typeof candidatesSchema>;
export type CandidateFitRecord = z.infer<typeof candidateFit>;
