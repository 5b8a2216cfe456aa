import type { OverTheYears, RecordOverTheYears } from "../../record/over-the-years-schema.ts";
import type { TagHistory } from "../../report/history-page.tsx";
import {
  adjustmentWords,
  driftWords,
  errorWords,
  forecastWords,
  leadingPlaceOf,
  placeWords,
  proposalWords,
  reliabilityWords,
} from "../../report/texts/history-texts.ts";

/** The records of a history, a row a record, for a terminal; the first row names the columns. */
export function historyRows({ overTheYears: years, distanceUnit: unit }: TagHistory): readonly (readonly string[])[] {
  const place = leadingPlaceOf(years);
  const at = place === undefined ? "" : `, ${unit}`;
  return [
    ["calibrated", "calibration", "as found", `error ± U${at}`, "adjustment", "as left", `error ± U${at}`],
    ...years.records.map(rowOf),
  ];
}

function rowOf(record: RecordOverTheYears): readonly string[] {
  const { performedOn, calibration, asFound, asLeft } = record;
  return [performedOn, calibration, ...stateCells(asFound), adjustmentWords(record), ...stateCells(asLeft)];
}

function stateCells(state: RecordOverTheYears["asFound"]): readonly [string, string] {
  if (state === null) return ["–", "–"];
  return [state.statement ?? "not determined", errorWords(state.point)];
}

/** What follows from them, a line each. */
export function historyLines({ overTheYears: years, distanceUnit: unit }: TagHistory): readonly string[] {
  const { staircase, controlChart, notDetermined } = years;
  return [
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
