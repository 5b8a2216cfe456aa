import type { SheetOfTable } from "../problems/place-of-row.ts";
import type { Calibration, LoopCheck, Reading, Standard, Trip } from "./calibration.ts";
import type { ControllerLimit } from "./controller-limit.ts";
import type { Candidate, Instrument, Output } from "./instrument.ts";
import type { TableName } from "./table-names.ts";

/** A checked row with the place and the text that it came from; `cells` holds what was typed, by column name. */
export type TableRow<Row> = {
  row: Row;
  file: string;
  line: number;
  /** Where the row stands on a sheet of a spreadsheet. */
  sheet?: SheetOfTable;
  cells: Readonly<Record<string, string>>;
};

/** How a file was written; with the bytes themselves this is all that reading it again needs. */
export type FileDescription = {
  name: string;
  encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252" | "xlsx" | "ods";
  delimiter: "," | ";" | "\t" | null;
  decimalMark: "point" | "comma";
};

/**
 * A file with the tables that were read so, and of a spreadsheet the sheets that they stood on; a spreadsheet whose sheets
 * were read in two ways is described twice.
 */
export type InputFile = FileDescription & {
  tables: readonly TableName[];
  sheets?: readonly (SheetOfTable & { table: TableName })[];
};

/** Everything in a workbook that belongs to one calibration. */
export type CalibrationRows = {
  calibration: TableRow<Calibration>;
  instrument: TableRow<Instrument>;
  standards: readonly TableRow<Standard>[];
  outputs: readonly TableRow<Output>[];
  readings: readonly TableRow<Reading>[];
  trips: readonly TableRow<Trip>[];
  loopChecks: readonly TableRow<LoopCheck>[];
  controllerLimits: readonly TableRow<ControllerLimit>[];
  candidates: readonly TableRow<Candidate>[];
  files: readonly InputFile[];
};
