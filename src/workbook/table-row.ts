import type { TableRow } from "../model/calibration-case.ts";
import type { AnyTableName, TableName } from "../model/table-names.ts";
import type { RowOf } from "../model/tables.ts";
import type { ProblemCode } from "../problems/catalogue.ts";
import type { Problem } from "../problems/problem.ts";

/** A row while it is read and checked: what could not be read is missing. */
export type DraftRow<Table extends AnyTableName = AnyTableName> = TableRow<Partial<RowOf<Table>>>;

export type DraftTables = { [Table in TableName]: readonly DraftRow<Table>[] };

/** `index` is the place of the cell in its row, where no column is to be named. */
export type Finding = { code: ProblemCode; column?: string; index?: number; read?: string; values?: Problem["values"] };
