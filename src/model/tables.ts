import type * as z from "zod";
import { calibrationSchema, loopCheckSchema, readingSchema, standardSchema, tripSchema } from "./calibration.ts";
import { controllerLimitSchema } from "./controller-limit.ts";
import { candidateSchema, instrumentSchema, outputSchema } from "./instrument.ts";
import { signerSchema } from "./signer.ts";
import type { AnyTableName } from "./table-names.ts";

/** What a row of each table is. */
export const tableSchemas = Object.freeze({
  instruments: instrumentSchema,
  outputs: outputSchema,
  standards: standardSchema,
  calibrations: calibrationSchema,
  readings: readingSchema,
  trips: tripSchema,
  loop_checks: loopCheckSchema,
  controller_limits: controllerLimitSchema,
  candidates: candidateSchema,
  signers: signerSchema,
} satisfies Record<AnyTableName, z.ZodObject>);

export type RowOf<Table extends AnyTableName> = z.infer<(typeof tableSchemas)[Table]>;
