import type { OverTheYears } from "../../record/over-the-years-schema.ts";
import { historyColumns } from "../../report/columns/history-columns.tsx";
import type { TagHistory } from "../../report/history-page.tsx";
import { namedRows } from "../../report/table/column.ts";
import {
  driftWords,
  forecastWords,
  leadingPlaceOf,
  placeWords,
  proposalWords,
  reliabilityWords,
} from "../../report/texts/history-texts.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";

/** The records of a history, a row a record, for a terminal; the first row names the columns. */
export function historyRows(history: TagHistory): readonly (readonly (string | number)[])[] {
  const { overTheYears, distanceUnit, decimalMark } = history;
  return withDecimalMark(decimalMark, () => namedRows(historyColumns(distanceUnit), overTheYears.records));
}

/** What follows from them, a line each. */
export function historyLines(history: TagHistory): readonly string[] {
  return withDecimalMark(history.decimalMark, () => linesOf(history));
}

function linesOf({ overTheYears: years, distanceUnit: unit, fate = [] }: TagHistory): readonly string[] {
  const { staircase, controlChart, notDetermined } = years;
  return [
    ...fate,
    ...placeLines(years, unit),
    `found in tolerance at the end of an interval: ${reliabilityWords(years)}`,
    `interval by ILAC-G24 method 1, staircase: ${proposalWords(staircase, notDetermined.staircase)}`,
    `interval by ILAC-G24 method 2, control chart: ${proposalWords(controlChart, notDetermined.controlChart)}`,
    "the owner of the loop decides; nothing is changed by itself",
    ...years.leftOut.map((one) => `not taken: ${one}`),
  ];
}

function placeLines(years: OverTheYears, unit: string): readonly string[] {
  const place = leadingPlaceOf(years);
  if (place === undefined) return ["no test point was judged"];
  const where = placeWords(place, unit);
  if (place.drift === null) return [`errors at the ${where}`, `drift: ${place.notDetermined.drift}`];
  return [
    `errors at the ${where}`,
    `drift, ${unit} a year, with its 95 % confidence interval: ${driftWords(place.drift)}`,
    `95 % prediction: ${forecastWords(place)}`,
  ];
}
