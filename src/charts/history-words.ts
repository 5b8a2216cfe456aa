import type { OverTheYears, PlaceOverTheYears } from "../record/over-the-years-schema.ts";
import { decimalsForSignificant, writePlain, writeSigned } from "../units/write-number.ts";
import type { Drawing } from "./drawing/draw.ts";

/** What the picture is of: a loop over its records. */
export type DrawnHistory = { tag: string; distanceUnit: string; overTheYears: OverTheYears };

const ofTheLine =
  "The straight line is fitted to the records since the last one; between the dotted lines the next result is expected " +
  "with 95 %. They show the scatter of the results, pooled over the test points, not an error that all of them share.";
const ofTheCross = "The cross is where they meet a limit.";

/** Title, caption and description of the picture at one place; count: how many results are drawn. */
export function historyWords(
  { tag, distanceUnit: unit, overTheYears }: DrawnHistory,
  place: PlaceOverTheYears,
  count: number,
): Omit<Drawing, "svg"> {
  const { distance, drift, meets } = place;
  const at = `At ${writePlain(distance)} ${unit}`;
  const title =
    drift === null ? `${at}: ${place.notDetermined.drift}.` : `${at} ${driftWords(place, drift.perYear, unit)}.`;
  const last = overTheYears.records.at(-1);
  return {
    title,
    caption:
      "A mark is the mean error of one record at this test point, of its worse direction: as found open, as left filled; " +
      "the bar beside it is ± U. The shaded band is the tolerance. A dashed upright line is an adjustment, at which the " +
      `line of drift begins anew.${drift === null ? "" : ` ${ofTheLine}`}${meets === null ? "" : ` ${ofTheCross}`}`,
    description:
      `Error of ${tag} over time, ${count} results at ${writePlain(distance)} ${unit}, tolerance ` +
      `from ${writePlain(place.toleranceLow)} to ${writePlain(place.toleranceHigh)} ${unit}. ` +
      `Last record ${last?.performedOn ?? ""}. ${title}`,
  };
}

function driftWords({ meets, isEarly, notDetermined }: PlaceOverTheYears, perYear: number, unit: string): string {
  const drift = `the error drifts by ${writeSigned(perYear, decimalsForSignificant(perYear, 2))} ${unit} a year`;
  const speed = isEarly ? `${drift}, by three records only` : drift;
  if (meets === null) return `${speed}; the forecast meets no limit, ${notDetermined.meets}`;
  if (meets.isAlready) return `${speed}; the forecast reaches beyond the ${meets.limit} limit already`;
  return `${speed}; the forecast meets the ${meets.limit} limit on ${meets.on}`;
}
