import { decimalMarkOf } from "../../assembly/decimal-mark-of.ts";
import { tellDoubts } from "../../assembly/plausibility/tell-doubts.ts";
import { tellTolerance } from "../../assembly/plausibility/tell-tolerance.ts";
import { groupedBy } from "../../model/grouped-by.ts";
import type { ProblemList } from "../../problems/problem-list.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import type { Workbook } from "../../workbook/build-workbook.ts";

/**
 * Notes what cannot be right, or is hardly meant, by what the numbers of a workbook say of each other: of every instrument
 * and every calibration that could be read, whatever else is wrong.
 */
export function noteDoubts(workbook: Workbook, problems: ProblemList): void {
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
