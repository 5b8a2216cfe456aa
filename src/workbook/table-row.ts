import type * as z from "zod";
import type { TableName, tableSchemas } from "../model/tables.ts";

/** A row of a table, where it stands, and its non-empty texts as typed, by column name. */
export type TableRow<Row> = { row: Row; file: string; line: number; cells: Readonly<Record<string, string>> };

export type RowOf<Table extends TableName> = z.infer<(typeof tableSchemas)[Table]>;

/** A row while it is read and checked: what could not be read is missing. */
export type DraftRow<Table extends TableName = TableName> = TableRow<Partial<RowOf<Table>>>;

export type DraftTables = { [Table in TableName]: readonly DraftRow<Table>[] };
