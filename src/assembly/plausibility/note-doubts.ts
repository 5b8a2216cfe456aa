import type { Calibration } from "../../model/calibration.ts";
import type { CalibrationRows, TableRow } from "../../model/calibration-case.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { Instrument } from "../../model/instrument.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { decimalMarkOf } from "../decimal-mark-of.ts";
import { tellDoubts } from "./tell-doubts.ts";
import { tellTolerance } from "./tell-tolerance.ts";

/** The rows of a workbook whose numbers are held against each other. */
type ToldRows = Pick<CalibrationRows, "standards" | "outputs" | "readings" | "trips" | "files"> & {
  instruments: readonly TableRow<Instrument>[];
  calibrations: readonly TableRow<Calibration>[];
};

/**
 * Notes what cannot be right, or is hardly meant, by what the numbers of a workbook say of each other: of every instrument
 * and every calibration that could be read, whatever else is wrong.
 *
 * @param workbook its rows that could be read
 * @param problems list that it goes to
 * Source: each check's own file.
 * @example toldBy((_, problems) => noteDoubts({ ...spoiledRows, instruments: [spoiledRows.instrument],
 *   calibrations: [spoiledRows.calibration] }, problems)) // ["plausible/reading-apart 5", "plausible/trip-apart 4"]
 */
export function noteDoubts(workbook: ToldRows, problems: ProblemList): void {
  const instruments = new Map(workbook.instruments.map((one) => [one.row.tag, one]));
  const standards = new Map(workbook.standards.map((one) => [one.row.standard, one]));
  const outputs = groupedBy(workbook.outputs, ({ row }) => row.tag);
  const readings = groupedBy(workbook.readings, ({ row }) => row.calibration);
  const trips = groupedBy(workbook.trips, ({ row }) => row.calibration);
  const markOf = (table: "readings" | "trips") => decimalMarkOf(workbook, table);
  for (const instrument of workbook.instruments) {
    withDecimalMark(instrument.row.decimalMark, () => tellTolerance(instrument, problems));
  }
  for (const calibration of workbook.calibrations) {
    const { calibration: name, tag, standards: names = [] } = calibration.row;
    const instrument = instruments.get(tag);
    if (instrument === undefined) continue;
    const told = {
      ...{ calibration, instrument, markOf },
      standards: names.flatMap((one) => standards.get(one) ?? []),
      outputs: outputs.get(tag) ?? [],
      readings: readings.get(name) ?? [],
      trips: trips.get(name) ?? [],
    };
    withDecimalMark(instrument.row.decimalMark, () => tellDoubts(told, problems));
  }
}
