import { assembleRecord } from "../../../src/assembly/assemble-record.ts";
import type { Reading, Trip } from "../../../src/model/calibration.ts";
import type { CalibrationRows, TableRow } from "../../../src/model/calibration-case.ts";
import type { CalibrationRecord } from "../../../src/record/record-schema.ts";
import type { DrawnFault } from "./converter-faults.ts";
import { instrumentOf, takeReadings, valueDecimals } from "./faulty-loop.ts";
import { seededDraws } from "./seeded-draws.ts";

/** The rows that a drawn fault leaves, with the digits that would have been typed. */
export function rowsOfDraw({ setting, fault }: DrawnFault, seed: number): CalibrationRows {
  const table = <Row>(file: string, rows: readonly Row[], cellsOf: (row: Row) => Record<string, string>) =>
    rows.map((row, index): TableRow<Row> => ({ row, file, line: index + 2, cells: cellsOf(row) }));
  const none = () => ({});
  const instrument = instrumentOf(setting);
  const calibration = { calibration: "C-1", tag: "LT-1", ...setting.calibration };
  const readings = takeReadings(setting, fault, seededDraws(seed));
  return {
    instrument: { row: instrument, file: "instruments.csv", line: 2, cells: {} },
    calibration: { row: calibration, file: "calibrations.csv", line: 2, cells: {} },
    readings: table("readings.csv", readings, (row) => cellsOf(row, valueDecimals(setting))),
    outputs: table("outputs.csv", setting.outputs, none),
    trips: table("trips.csv", setting.trips, ({ reference }: Trip) => ({ reference: reference.toFixed(1) })),
    loopChecks: table("loop_checks.csv", setting.loopChecks, none),
    standards: [],
    controllerLimits: [],
    candidates: [],
    files: [],
  };
}

function cellsOf({ reference, signal, counts, value }: Reading, decimals: number): Record<string, string> {
  return {
    reference: reference.toFixed(1),
    ...(signal !== undefined && { signal: signal.toFixed(3) }),
    ...(counts !== undefined && { counts: counts.toFixed(0) }),
    ...(value !== undefined && { value: value.toFixed(decimals) }),
  };
}

/** The whole record of a drawn fault. */
export function recordOfRows(rows: CalibrationRows): CalibrationRecord {
  return assembleRecord(rows, { softwareVersion: "0.0.0", digests: new Map(), warnings: [] });
}
