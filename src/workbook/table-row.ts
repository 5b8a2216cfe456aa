import type * as z from "zod";
import type { TableRow } from "../model/calibration-case.ts";
import type { TableName, tableSchemas } from "../model/tables.ts";

export type RowOf<Table extends TableName> = z.infer<(typeof tableSchemas)[Table]>;

/** A row while it is read and checked: what could not be read is missing. */
export type DraftRow<Table extends TableName = TableName> = TableRow<Partial<RowOf<Table>>>;

export type DraftTables = { [Table in TableName]: readonly DraftRow<Table>[] };
