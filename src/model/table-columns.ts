import type { Column } from "./column.ts";
import { columnsByTable } from "./columns-ahead.ts";
import type { AnyTableName } from "./table-names.ts";

/** The columns of a table, in the order of its schema. */
export function tableColumns(table: AnyTableName): readonly Column[] {
  return columnsByTable[table];
}
