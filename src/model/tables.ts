import { calibrationSchema, loopCheckSchema, readingSchema, standardSchema, tripSchema } from "./calibration.ts";
import { type Column, columnsOf } from "./column.ts";
import { candidateSchema, instrumentSchema, outputSchema } from "./instrument.ts";

/** Every table of a workbook by the name of its file or sheet, in the order in which they are read. */
export const tableSchemas = Object.freeze({
  instruments: instrumentSchema,
  outputs: outputSchema,
  standards: standardSchema,
  calibrations: calibrationSchema,
  readings: readingSchema,
  trips: tripSchema,
  loop_checks: loopCheckSchema,
  candidates: candidateSchema,
});

export type TableName = keyof typeof tableSchemas;

export const tableNames = Object.freeze(Object.keys(tableSchemas) as TableName[]);

/** A workbook without one of these is none. */
export const requiredTables = Object.freeze(["instruments", "calibrations", "readings"] as const);

const columnsByTable = new Map<TableName, readonly Column[]>();

/** The columns of a table, computed once. */
export function tableColumns(table: TableName): readonly Column[] {
  const known = columnsByTable.get(table);
  if (known !== undefined) return known;
  const columns = columnsOf(tableSchemas[table]);
  columnsByTable.set(table, columns);
  return columns;
}
