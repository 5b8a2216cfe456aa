import type * as z from "zod";
import type { SealedRecord } from "./record-schema.ts";
import type { Seal, signOffSchema } from "./seal-schema.ts";

/** A record as it stands in its file, in whatever form: what its seal and its signatures are of. */
export type WrittenRecord = Readonly<Record<string, unknown>> & { seal: Seal; signOff: z.infer<typeof signOffSchema> };

/** A record that was read: in the present form for every question, and as it was written for every proof. */
export type ReadRecord = {
  /** In the present form; fields that this program does not know are kept. */
  record: SealedRecord;
  /** Never touched; the same object as `record` where it was written in the present form. */
  written: WrittenRecord;
  /** Number of the form that it was written in. */
  form: number;
  /** Paths of the fields that this program does not know. */
  unknownFields: readonly string[];
};
