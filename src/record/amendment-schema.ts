import * as z from "zod";

/** One thing that differs between a revision and the one it replaces. */
const changeSchema = z.strictObject({
  place: z.string().describe("path in the record, such as inputs.rows.readings[3].cells.signal"),
  before: z.string().nullable().describe("as JSON; null where there was nothing"),
  after: z.string().nullable(),
});

export type Change = z.infer<typeof changeSchema>;

/** Why a later revision exists, and what it changed (ISO/IEC 17025:2017, 7.8.8). */
export const amendmentSchema = z.strictObject({
  replaces: z.strictObject({ calibration: z.string(), revision: z.int().min(1), sha256: z.string() }),
  reason: z.string().min(1),
  by: z.string().min(1),
  at: z.iso.datetime({ offset: true }),
  changes: z.array(changeSchema),
});

export type Amendment = z.infer<typeof amendmentSchema>;
