import type * as z from "zod";
import { calibrationSchema, loopCheckSchema, readingSchema, standardSchema, tripSchema } from "./calibration.ts";
import { type Column, columnsOf } from "./column.ts";
import { controllerLimitSchema } from "./controller-limit.ts";
import { candidateSchema, instrumentSchema, outputSchema } from "./instrument.ts";
import { signerSchema } from "./signer.ts";

/** Every table of a workbook by the name of its file or sheet, in the order in which they are read. */
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
});

export type TableName = keyof typeof tableSchemas;

/** Tables that belong to no workbook: they lie beside the records. */
const tablesApart = Object.freeze({ signers: signerSchema });

const everySchema = Object.freeze({ ...tableSchemas, ...tablesApart });

export type AnyTableName = keyof typeof everySchema;

export type RowOf<Table extends AnyTableName> = z.infer<(typeof everySchema)[Table]>;

export const tableNames = Object.freeze(Object.keys(tableSchemas) as TableName[]);

/** A workbook without one of these is none. */
export const requiredTables = Object.freeze(["instruments", "calibrations", "readings"] as const);

const columnsByTable = new Map<AnyTableName, readonly Column[]>();

/** The columns of a table, computed once. */
export function tableColumns(table: AnyTableName): readonly Column[] {
  const known = columnsByTable.get(table);
  if (known !== undefined) return known;
  const columns = columnsOf(everySchema[table]);
  columnsByTable.set(table, columns);
  return columns;
}
