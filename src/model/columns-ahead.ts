import { type Column, columnsOf } from "./column.ts";
import type { AnyTableName } from "./table-names.ts";
import { tableSchemas } from "./tables.ts";

/** The columns of each table. The build puts what is here as data in its place: no schema is made to read a table. */
export const columnsByTable = Object.fromEntries(
  Object.entries(tableSchemas).map(([table, schema]) => [table, columnsOf(schema)]),
) as Readonly<Record<AnyTableName, readonly Column[]>>;
