/** Every table of a workbook by the name of its file or sheet, in the order in which they are read. */
export const tableNames = Object.freeze([
  "instruments",
  "outputs",
  "standards",
  "calibrations",
  "readings",
  "trips",
  "loop_checks",
  "controller_limits",
  "candidates",
] as const);

export type TableName = (typeof tableNames)[number];

/** Tables that belong to no workbook lie beside the records. */
export type AnyTableName = TableName | "signers";

/** A workbook without one of these is none. */
export const requiredTables = Object.freeze(["instruments", "calibrations", "readings"] as const);
