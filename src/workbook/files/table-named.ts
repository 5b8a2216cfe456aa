import { type TableName, tableNames } from "../../model/table-names.ts";
import { foldedColumnName } from "../header-columns.ts";

const byName: ReadonlyMap<string, TableName> = new Map(tableNames.map((name) => [name, name]));

/** The table that a file or a sheet of this name holds: "Loop Checks" is loop_checks. */
export function tableNamed(name: string): TableName | undefined {
  return byName.get(foldedColumnName(name));
}
