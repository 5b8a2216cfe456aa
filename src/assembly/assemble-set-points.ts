import { setPointTable } from "../analysis/stages/set-point-table.ts";
import type { CalibrationRecord } from "../record/record-schema.ts";

/**
 * The set-point table of a record.
 *
 * @param record with its instrument and outputs
 * @returns the part; every loop has one
 * Source: `set-point-table.ts`.
 * @example assembleSetPoints(record).setPointTable.length // 8, with an output
 */
export function assembleSetPoints({ instrument, outputs }: CalibrationRecord): {
  setPointTable: NonNullable<CalibrationRecord["setPointTable"]>;
} {
  return { setPointTable: setPointTable(instrument, outputs).map((row) => ({ ...row })) };
}
