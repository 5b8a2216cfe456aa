import type { Calibration, Reading, Standard, Trip } from "../../model/calibration.ts";
import type { InputFile, TableRow } from "../../model/calibration-case.ts";
import type { Instrument, Output } from "../../model/instrument.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { decimalMarkOf } from "../decimal-mark-of.ts";
import { tellContradictions } from "./tell-contradictions.ts";
import { tellDoubts } from "./tell-doubts.ts";
import { tellOutputTolerance, tellTolerance } from "./tell-tolerance.ts";

/** Rows of a table, and those of one tag, standard or calibration. */
type RowsOf<Row> = Iterable<TableRow<Row>> & { of(owner: string): readonly TableRow<Row>[] };

/** The rows of a workbook whose numbers are held against each other. */
type ToldRows = {
  instruments: RowsOf<Instrument>;
  calibrations: RowsOf<Calibration>;
  standards: RowsOf<Standard>;
  outputs: RowsOf<Output>;
  readings: RowsOf<Reading>;
  trips: RowsOf<Trip>;
  files: readonly InputFile[];
};

/**
 * Notes what cannot be right, or is hardly meant, by what the numbers of a workbook say of each other: of every instrument
 * and every calibration that could be read, whatever else is wrong.
 *
 * @param workbook its rows that could be read
 * @param problems list that it goes to
 * Source: each check's own file.
 * @example toldBy((_, problems) => noteDoubts(spoiledWorkbook, problems)) // ["plausible/reading-apart 5",
 *   "plausible/trip-apart 4"]
 */
export function noteDoubts(workbook: ToldRows, problems: ProblemList): void {
  const markOf = (table: "readings" | "trips") => decimalMarkOf(workbook, table);
  for (const instrument of workbook.instruments) {
    withDecimalMark(instrument.row.decimalMark, () => {
      tellTolerance(instrument, problems);
      tellContradictions(instrument, problems);
      for (const output of workbook.outputs.of(instrument.row.tag)) tellOutputTolerance(output, instrument, problems);
    });
  }
  for (const calibration of workbook.calibrations) {
    const { calibration: name, tag, standards: names = [] } = calibration.row;
    const [instrument] = workbook.instruments.of(tag);
    if (instrument === undefined) continue;
    const told = {
      ...{ calibration, instrument, markOf },
      standards: names.flatMap((one) => workbook.standards.of(one)),
      outputs: workbook.outputs.of(tag),
      readings: workbook.readings.of(name),
      trips: workbook.trips.of(name),
    };
    withDecimalMark(instrument.row.decimalMark, () => tellDoubts(told, problems));
  }
}
